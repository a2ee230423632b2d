// Contract of the open ear exactly at its limits: which of several pieces is the word, what talk around it takes away, what runs on behind the panel.
import { describe, expect, test } from 'vitest';
import { piece, scriptedEar, stretch } from './scriptedEar.ts';

const sure = (begins: number, ends: number, by = 9) => piece(stretch(begins, ends, by));

describe('of the pieces of a sound', () => {
  test('the likeliest is the word from where it may be asked about, else the loudest is weighed; of two alike the first', () => {
    const of = (a: number, b: number) => {
      const [first, second] = [sure(100, 150, a), sure(200, 250, b)];
      const ear = scriptedEar();
      return [...ear.ends([first, second], second), ...ear.room(40)];
    };
    expect([of(1, 0.5), of(0.99, 0.5), of(4, 4), of(3, 4)]).toEqual([
      ['unsure 1.00 to 1.50 at 0.31'],
      ['unlike every word, null'],
      ['word 1.00 to 1.50 at 0.01'],
      ['word 2.00 to 2.50 at 0.01'],
    ]);
  });

  test('none is a word where another is a syllable, or the burst that was left out before it', () => {
    const beside = (shape: 'talk' | 'hiss' | 'plain') => scriptedEar().ends([sure(300, 350), piece(stretch(100, 160, -9, shape))]);
    expect([beside('talk'), beside('plain')]).toEqual([['amid talk, undo'], ['word 3.00 to 3.50 at 0.01']]);
    const behind = (shape: 'talk' | 'plain') =>
      scriptedEar().ends([piece(stretch(100, 250, 0), { stretch: stretch(190, 250, 9), before: stretch(100, 150, -9, shape) })]);
    expect([behind('talk'), behind('plain')]).toEqual([['amid talk, undo'], ['word 1.90 to 2.50 at 0.01']]);
  });

  test('a piece is compared without its first burst where it is not taken whole, that is no talk, and the rest is taken', () => {
    const of = (whole: number, rest: number, before: 'talk' | 'plain' = 'plain', ends = 150) =>
      scriptedEar().ends([piece(stretch(100, 250, whole), { stretch: stretch(190, 250, rest), before: stretch(100, ends, -9, before) })])[0];
    expect([of(2.19, 4), of(3.2, 9), of(1, 2.19)]).toEqual(['word 1.90 to 2.50 at 0.01', 'word 1.00 to 2.50 at 0.01', undefined]);
    expect([of(0, 4, 'talk', 170), of(0, 4, 'plain', 170)]).toEqual(['unlike every word, null', 'word 1.90 to 2.50 at 0.01']);
    const doubtful = (whole: number, rest: number) => {
      const ear = scriptedEar();
      ear.ends([piece(stretch(100, 250, whole), { stretch: stretch(190, 250, rest), before: stretch(100, 150) })]);
      return ear.room(40);
    };
    expect([doubtful(2.2, 9), doubtful(1, 2.19), doubtful(1, 2.2)]).toEqual([
      ['word 1.00 to 2.50 at 0.31'],
      ['unsure 1.00 to 2.50 at 0.31'],
      ['word 1.90 to 2.50 at 0.31'],
    ]);
  });
});

describe('talk', () => {
  /** What becomes of a word that begins so many frames after frame 200, where this ended. */
  const after = (frames: number, ...before: ReturnType<typeof piece>[]) => {
    const ear = scriptedEar();
    ear.ends(before);
    return ear.ends([sure(200 + frames, 260 + frames)]);
  };
  const amid = ['amid talk, undo'];

  test('takes away a word that begins less than half a second after it', () => {
    const talk = piece(stretch(100, 200, -9, 'talk'));
    expect([after(49, talk), after(50, talk)[0]]).toEqual([amid, 'word 2.50 to 3.10 at 0.02']);
    expect(after(20, piece(stretch(100, 200)))[0]).toMatch('word');
    expect(after(20, piece(stretch(100, 200, -9, 'tone')))[0]).toMatch('word');
  });

  test('that is no syllable takes away a word of the same sound and of the next, by the same half second; not the word that it is itself', () => {
    const hiss = piece(stretch(100, 200, -9, 'hiss'));
    const within = (frames: number) => scriptedEar().ends([hiss, sure(200 + frames, 260 + frames)])[0];
    expect([within(49), within(50)]).toEqual(['amid talk, undo', 'word 2.50 to 3.10 at 0.01']);
    expect(scriptedEar().ends([sure(30, 90), hiss])[0]).toBe('word 0.30 to 0.90 at 0.01');
    expect(scriptedEar().ends([piece(stretch(100, 200, 9, 'hiss'))])[0]).toBe('word 1.00 to 2.00 at 0.01');
  });

  test('goes on with what comes amid it, but not with a tone', () => {
    const then = (shape: 'plain' | 'tone', until: number) => {
      const ear = scriptedEar();
      ear.ends([piece(stretch(100, 200, -9, 'talk'))]);
      ear.ends([piece(stretch(220, until, 9, shape))]);
      return ear.ends([sure(until + 20, until + 80)])[0];
    };
    expect([then('plain', 280), then('tone', 280)]).toEqual(['amid talk, undo', 'word 3.00 to 3.60 at 0.03']);
  });

  test('that is too long, or beside the panel, is talk; another sound is none', () => {
    const long = (shape: 'talk' | 'plain') => after(20, piece(stretch(100, 200, -9, shape), null, true))[0];
    expect([long('talk'), long('plain')]).toEqual(['amid talk, undo', 'word 2.20 to 2.80 at 0.02']);
    const beside = (shape: 'talk' | 'plain') => {
      const ear = scriptedEar();
      ear.room(100);
      ear.panel(5);
      expect(ear.ends([piece(stretch(105, 200, 9, shape))])).toEqual(['beside the panel, undo']);
      return ear.ends([sure(220, 280)])[0];
    };
    expect([beside('talk'), beside('plain')]).toEqual(['amid talk, undo', 'word 2.20 to 2.80 at 1.02']);
  });

  test('is what follows a doubtful word, which ends where that ended', () => {
    const then = (frames: number) => {
      const ear = scriptedEar();
      ear.ends([sure(100, 200, 2.5)]);
      expect(ear.begins()).toEqual(['amid talk, undo']);
      return ear.ends([sure(200 + frames, 260 + frames)])[0];
    };
    expect([then(49), then(50)]).toEqual(['amid talk, undo', 'word 2.50 to 3.10 at 0.03']);
  });
});

describe('behind the panel', () => {
  test('what begins less than the margin after it was beside it', () => {
    const of = (frames: number) => {
      const ear = scriptedEar();
      ear.room(100);
      ear.panel(5);
      return ear.ends([sure(100 + frames, 160 + frames)])[0];
    };
    expect([of(11), of(12)]).toEqual(['beside the panel, undo', 'word 1.12 to 1.72 at 1.01']);
  });

  /** Each time the panel runs on for so many frames; then a word so many frames after it. */
  const late = (first: number, times: number, ranOn: number, frames: number) => {
    const ear = scriptedEar();
    let count = first;
    ear.room(first);
    for (let time = 0; time < times; time++) {
      ear.panel(5);
      const ends = count + ranOn + 12;
      ear.ends([piece(stretch(count, count + 30)), piece(stretch(count + 5, ends))]);
      ear.room(99);
      count += 100;
    }
    ear.panel(5);
    return ear.ends([sure(count + frames, count + frames + 60)])[0]?.split(' ')[0];
  };

  test('what begins before it was silent three times is beside it, too', () => {
    expect([late(50, 3, 40, 39), late(50, 3, 40, 40), late(50, 2, 40, 39)]).toEqual(['beside', 'word', 'word']);
    expect([late(50, 3, 70, 69), late(50, 3, 70, 70)]).toEqual(['beside', 'word']);
  });

  test('how late it was before the first frame is not known, from then on it is', () => {
    expect([late(0, 3, 40, 39), late(0, 4, 40, 39), late(1, 3, 40, 39)]).toEqual(['word', 'beside', 'beside']);
  });

  const unheard = () => {
    const ear = scriptedEar();
    ear.room(300);
    for (let time = 0; time < 4; time++) {
      ear.panel(60);
      ear.room(1);
    }
    return ear;
  };

  test('a word counts where the panel is not heard and nothing stands beside it; it began as many frames ago as its sound', () => {
    // 304 frames of the room, and one beside the panel: the sound began at its frame -89, 90 before.
    expect(unheard().endsBeside([sure(0, 60, 3.2)], -89)).toEqual(['word 2.14 to 2.74 at 3.04']);
    expect(unheard().endsBeside([sure(0, 60, 3.19)], -89)).toEqual(['beside the panel, undo']);
    expect(unheard().endsBeside([sure(0, 60, 9), sure(90, 100, -9)], -89)).toEqual(['beside the panel, undo']);
    expect(unheard().endsBeside([sure(0, 60, 2.19)], -89)).toEqual([]);
  });
});
