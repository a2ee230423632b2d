// Contract of hearing and of the one switch in a session.
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { words as sessionWords } from '../../../src/words/en/session.ts';
import { words } from '../../../src/words/en/voice.ts';
import type { Deaf } from '../../../src/voice/deaf.ts';
import { moment } from '../../../src/units.ts';
import type { Take } from '../../../src/voice/ownWords/take.ts';
import { addKit, phaseOf, sweeping } from './sweeping.ts';
import { Computer, settle } from './world.ts';

describe('words', () => {
  test('nothing listens until the person said yes to it, nor when no sweep or result stands', async () => {
    const { window } = await sweeping();
    expect(window.earOpen).toBe(false);
    window.session.changeSettings({ voice: { listen: 'browser' } });
    await settle();
    expect(window.earOpen).toBe(true);
    await window.tell('finish');
    expect(window.earOpen).toBe(true);
    await window.tell('next');
    expect(window.earOpen).toBe(false);
    expect((await new Computer().open()).earOpen).toBe(false);
  });

  test('a following window does not listen', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    const other = await computer.open();
    expect([window.earOpen, other.earOpen]).toEqual([true, false]);
  });

  test('a word that makes sense is taken with what was heard, and the rest of the utterance is dropped', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    await window.tell('holding');
    expect(window.ear?.onHeard([{ text: 'salad' }, { text: 'Flickers' }], true)).toBe(true);
    await settle();
    expect(window.session.sweep.value?.holds.at(-1)).toMatchObject({ by: 'voice', heard: 'flickers', verdict: { light: 'flicker' } });
    expect(window.session.heard.value).toMatchObject({ words: 'flickers', became: expect.stringMatching(/^flickering at 0$/), by: 'voice' });
    expect(computer.journal().at(-1)).toBe('judged');
  });

  test('other talk changes nothing and says nothing', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    expect(window.ear?.onHeard([{ text: 'mind the tripod' }], true)).toBe(false);
    await settle();
    expect(computer.log).toEqual(['write live heard']);
    expect(window.session.heard.value).toBeNull();
  });

  test('a value without its sign is asked for again', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    expect(window.ear?.onHeard([{ text: 'set seven' }], true)).toBe(true);
    await settle();
    expect(computer.log).toEqual(['write live heard', 'say Say that again.']);
    expect(window.session.heard.value).toMatchObject({ words: 'set seven', became: 'not clear' });
  });

  test('what is doubtful is read back, and counts when it is said again', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'own' } });
    await window.tell('holding');
    computer.log.length = 0;
    const flicker = () => window.ear?.onHeard([{ text: 'flicker', doubtful: true }], true);
    expect(flicker()).toBe(true);
    await settle();
    expect(computer.log).toEqual(['write live heard', 'say Flicker?']);
    expect(window.session.sweep.value?.holds).toEqual([]);
    flicker();
    await settle();
    expect(window.session.sweep.value?.holds.at(-1)?.verdict.light).toBe('flicker');
  });

  test.each([
    ['amid talk', 'not taken, because talk ran into it. Say it again.'],
    ['beside the panel', 'not taken, because the panel was speaking. Say it again.'],
  ] as const)('a word that was missed %s is shown with why, kept as heard, and moves nothing', async (why, shown) => {
    const { computer, window } = await sweeping({ voice: { listen: 'own' } });
    await window.tell('holding');
    computer.log.length = 0;
    window.ear?.onMissed('flicker', why);
    await settle();
    expect(window.session.heard.value).toMatchObject({ words: 'flicker', became: shown, by: 'voice' });
    expect(computer.log).toEqual(['write live heard']);
    expect(phaseOf(window)).toBe('holding');
  });

  test('undo answers a question with no, and takes nothing back', async () => {
    const { window } = await sweeping({ voice: { listen: 'own' } });
    await window.tell('holding');
    window.ear?.onHeard([{ text: 'flicker', doubtful: true }], true);
    window.ear?.onHeard([{ text: 'undo' }], true);
    window.ear?.onHeard([{ text: 'flicker', doubtful: true }], true);
    await settle();
    expect(phaseOf(window)).toBe('holding');
    expect(window.session.sweep.value?.holds).toEqual([]);
  });

  test('a question does not outlive what it was asked about', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'own' } });
    await window.tell('holding');
    window.ear?.onHeard([{ text: 'solid', doubtful: true }], true);
    computer.pass(5);
    await window.ring('hold time');
    window.ear?.onHeard([{ text: 'solid', doubtful: true }], true);
    await settle();
    expect(phaseOf(window)).toBe('judging');
  });

  test('everything heard is kept with the hold, but of talk only how long it was', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    window.ear?.onHeard([{ text: 'did you lock the car this morning' }], true);
    window.ear?.onHeard([{ text: 'holding' }, { text: 'folding' }], true);
    await settle();
    expect(computer.disk['live']).toMatchObject([
      { did: 'opened' },
      { did: 'heard', guesses: ['7 words'], became: 'other' },
      { did: 'heard', guesses: ['holding', 'folding'], became: 'taken' },
      { did: 'began', by: 'voice' },
    ]);
  });

  test('the logbook answers a spoken question aloud and on the screen, and the sweep stays where it is', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    const before = window.session.sweep.value?.phase;
    expect(window.ear?.onHeard([{ text: 'look up 85' }], true)).toBe(true);
    await settle();
    const answer = 'Orrin 85 f/1.8 on Velde M1, 85 mm at 4.25 m: never measured.';
    expect(computer.log).toEqual(['write live heard', `say ${answer}`]);
    expect(window.session.announcement.value).toBe(answer);
    expect(window.session.heard.value).toMatchObject({ words: 'look up 85', became: 'looked up' });
    expect(window.session.sweep.value?.phase).toBe(before);
  });

  test('during a hold nothing is looked up', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    await window.tell('holding');
    computer.log.length = 0;
    expect(window.ear?.onHeard([{ text: 'look up 85' }], true)).toBe(false);
    await settle();
    expect(computer.log).toEqual(['write live heard']);
  });

  test('what was heard is erased from the sweep, the logbook and the copies, and every hold stays', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    const hear = async (text: string): Promise<void> => {
      window.ear?.onHeard([{ text }], true);
      await settle();
    };
    for (const text of ['holding', 'flicker', 'finish']) await hear(text);
    computer.copies.push({ at: computer.time, why: 'daily', stored: structuredClone(computer.disk) });
    window.session.leave();
    await settle();
    await window.session.begin(addKit(window));
    await settle();
    for (const text of ['holding', 'flickers']) await hear(text);
    expect(JSON.stringify([computer.disk, computer.copies])).toContain('flicker"');
    const { holds } = window.session.sweep.value ?? {};

    expect(await window.session.eraseHeard()).toEqual({ ok: true });
    const stored = JSON.stringify([computer.disk, computer.copies]);
    expect(stored).not.toContain('"did":"heard"');
    expect(stored).not.toMatch(/"heard":"/);
    expect(window.session.records.value[0]?.journal.map(({ did }) => did)).toEqual(['opened', 'began', 'judged', 'finished']);
    expect(computer.journal()).toEqual(['opened', 'began', 'judged']);
    expect(window.session.sweep.value?.holds).toEqual(holds?.map((hold) => ({ ...hold, heard: null })));
    await window.tell('undo');
    expect(window.session.sweep.value?.holds).toEqual([]);
  });

  describe('a word whose sound began before the last step', () => {
    test.each(['browser', 'own'] as const)('does not judge the next hold, with speech and tones off, and says so (%s)', async (listen) => {
      const { computer, window } = await sweeping({ sound: false, voice: { listen, speak: false } });
      await window.tell('holding');
      computer.pass(2);
      await window.tell('nothing');
      computer.pass(0.2);
      await window.tell('holding');
      computer.pass(0.5);
      expect(window.ear?.onHeard([{ text: 'flicker' }], false, 1000)).toBe(false);
      expect(window.ear?.onHeard([{ text: 'flicker' }], true, 1000)).toBe(true);
      await settle();
      expect(window.session.sweep.value?.holds.map(({ verdict }) => verdict.light)).toEqual(['dark']);
      expect(phaseOf(window)).toBe('holding');
      expect(window.session.heard.value).toMatchObject({ words: 'flicker', became: sessionWords.became['too late'] });
      window.ear?.onHeard([{ text: 'flicker' }], true, 300);
      await settle();
      expect(window.session.sweep.value?.holds.map(({ verdict }) => verdict.light)).toEqual(['dark', 'flicker']);
    });

    test('counts where the end tone of the same hold fell into it', async () => {
      const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
      await window.tell('holding');
      computer.pass(2);
      await window.ring('hold time');
      expect(phaseOf(window)).toBe('judging');
      computer.pass(0.3);
      window.ear?.onHeard([{ text: 'solid' }], true, 700);
      await settle();
      expect(window.session.sweep.value?.holds.at(-1)?.verdict.light).toBe('steady');
    });

    test('is other talk where it would have been none of its words anyway', async () => {
      const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
      await window.tell('holding');
      computer.log.length = 0;
      expect(window.ear?.onHeard([{ text: 'mind the tripod' }], true, 5000)).toBe(false);
      await settle();
      expect(window.session.heard.value?.became).not.toBe(sessionWords.became['too late']);
    });

    test('tells a recogniser that what it hears is about something else: at each step between holds, not at the end tone', async () => {
      const { window } = await sweeping({ voice: { listen: 'browser' } });
      const between = window.ear?.passes();
      await window.tell('holding');
      expect(between?.aborted).toBe(true);
      const hold = window.ear?.passes();
      await window.ring('hold time');
      expect(hold?.aborted).toBe(false);
      await window.tell('solid');
      expect(hold?.aborted).toBe(true);
    });
  });

  test('the recogniser is changed during a sweep, and the words that count are those that make sense now', async () => {
    const { window } = await sweeping({ voice: { listen: 'browser' } });
    expect(window.earBy).toBe('browser');
    window.session.changeSettings({ voice: { listen: 'own' } });
    await settle();
    expect(window.earBy).toBe('own');
    expect(window.ear?.wordsNow()).toEqual(expect.arrayContaining(['holding', 'undo', 'minus', 'seven']));
    await window.tell('holding');
    expect(window.ear?.wordsNow()).not.toContain('minus');
  });

  test('where the switch opens the ear, nothing is taken before it is pressed, and the press tells nothing else', async () => {
    const { window } = await sweeping({ voice: { listen: 'own', open: 'pressed' } });
    expect(window.session.ear.value).toBe('opens when pressed');
    expect(window.ear?.onHeard([{ text: 'holding' }], true)).toBe(false);
    window.session.contact('down');
    window.session.contact('up');
    expect(phaseOf(window)).toBe('dialling');
    expect(window.ear?.onHeard([{ text: 'holding' }], true)).toBe(true);
    await settle();
    expect(phaseOf(window)).toBe('holding');
    expect(window.ear?.onHeard([{ text: 'flicker' }], true)).toBe(false);
  });

  test('the browser’s recogniser is closed between presses', async () => {
    const { window } = await sweeping({ voice: { listen: 'browser', open: 'pressed' } });
    expect(window.earOpen).toBe(false);
    window.session.contact('down');
    await settle();
    expect(window.earOpen).toBe(true);
  });

  test.each(Object.keys(words.deafSaid) as Deaf[])(
    'an ear that is deaf because of “%s” says so aloud once, that it hears again, and moves nothing',
    async (why) => {
      const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
      const before = [window.session.sweep.value, window.session.announcement.value];
      window.ear?.onDeaf(why);
      window.ear?.onDeaf(why);
      await settle();
      expect(window.session.deaf.value).toBe(why);
      window.ear?.onDeaf(null);
      await settle();
      expect(window.session.deaf.value).toBeNull();
      expect(computer.log).toEqual([`say ${words.deafSaid[why]}`, `say ${words.hearsAgain}`]);
      expect([window.session.sweep.value, window.session.announcement.value]).toEqual(before);
      expect(window.session.troubles.value).toEqual([]);
    },
  );

  test('an ear that is closed has nothing in its way and says nothing', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    window.ear?.onDeaf('muted');
    await settle();
    computer.log.length = 0;
    window.session.changeSettings({ voice: { listen: 'off' } });
    window.ear?.onDeaf(null);
    await settle();
    expect(computer.log.filter((line) => line.startsWith('say'))).toEqual([]);
  });

  test('a person may have it tried again, here or in place of another window', async () => {
    const { computer, window } = await sweeping({ voice: { listen: 'browser' } });
    window.session.listenAgain(false);
    window.session.listenAgain(true);
    expect(computer.log).toEqual(['listen again', 'listen here']);
  });

  test.each(['look up 85', 'look up eight five', 'look up Orrin'])('“%s” is answered alike by the browser’s recogniser and in taught words', async (asked) => {
    const answers = await Promise.all(
      (['browser', 'own'] as const).map(async (listen) => {
        const { window } = await sweeping({ voice: { listen } });
        window.ear?.onHeard([{ text: asked }], true);
        await settle();
        return window.session.announcement.value;
      }),
    );
    expect(answers).toEqual(Array.from(answers, () => 'Orrin 85 f/1.8 on Velde M1, 85 mm at 4.25 m: never measured.'));
  });

  test('between holds the digits, “look up” and the names of the lenses count, and during a hold none of them', async () => {
    const { window } = await sweeping({ voice: { listen: 'own' } });
    const asking = ['look up', 'eight', 'Orrin 85 f/1.8'];
    expect(window.ear?.wordsNow()).toEqual(expect.arrayContaining(asking));
    expect(window.ear?.namesNow()).toEqual(['Orrin 85 f/1.8']);
    await window.tell('holding');
    for (const word of asking) expect(window.ear?.wordsNow()).not.toContain(word);
  });
});

describe('the sound of the panel itself', () => {
  test('a computer without a voice is mute, which is no trouble, until a voice answers', async () => {
    const { window } = await sweeping();
    window.noVoice = true;
    await window.tell('repeat');
    expect([window.session.mute.value, window.session.troubles.value]).toEqual([true, []]);
    window.noVoice = false;
    await window.tell('repeat');
    expect(window.session.mute.value).toBe(false);
  });

  test('tones and speech are as loud as was set', async () => {
    const { window } = await sweeping({ loudness: 0.4 });
    await window.tell('holding');
    expect(new Set(window.loudnesses)).toEqual(new Set([0.4]));
  });

  test('the route of sound is awake while a sweep runs here, and not in a pause, at the end, in a follower or where nothing sounds', async () => {
    const { computer, window } = await sweeping();
    const other = await computer.open();
    expect([window.routeAwake, other.routeAwake]).toEqual([true, false]);
    await window.tell('pause');
    expect(window.routeAwake).toBe(false);
    await window.tell('resume');
    expect(window.routeAwake).toBe(true);
    window.session.changeSettings({ sound: false, voice: { speak: false } });
    await settle();
    expect(window.routeAwake).toBe(false);
    window.session.changeSettings({ sound: true });
    await window.tell('finish');
    expect(window.routeAwake).toBe(false);
  });

  test('the sound check plays both tones of a hold and a value, as far as they are on', async () => {
    vi.useFakeTimers();
    const computer = new Computer();
    const opening = computer.open();
    await vi.advanceTimersByTimeAsync(1000);
    const { session } = await opening;
    const tried = async (): Promise<unknown> => {
      computer.log.length = 0;
      const came = session.trySound();
      await vi.dynamicImportSettled();
      await vi.advanceTimersByTimeAsync(3000);
      return [await came, computer.log.filter((line) => !line.startsWith('write'))];
    };
    expect(await tried()).toEqual([{ tones: 'sounded', speech: 'said' }, ['tone begin', 'tone end', 'say plus six']]);
    session.changeSettings({ sound: false, voice: { speak: false } });
    expect(await tried()).toEqual([{ tones: 'off', speech: 'off' }, []]);
    vi.useRealTimers();
  });
});

describe('own words that were right', () => {
  const take: Take = { word: 'flicker', noise: Array.from({ length: 8 }, () => -100), frames: Array.from({ length: 80 }, () => -60) };

  async function sweptWith(learn: boolean) {
    const { computer, window } = await sweeping({ voice: { listen: 'own', learn } });
    computer.taught = [take];
    const hear = async (text: string, doubtful = false): Promise<void> => {
      computer.pass(1);
      window.ear?.onHeard([{ text, doubtful, takes: [{ ...take, word: text }] }], true);
      await settle();
    };
    const hold = async (...words: readonly string[]): Promise<void> => {
      await hear('holding');
      for (const word of words) await hear(word);
    };
    return { computer, window, hear, hold };
  }

  test('are learned once the next hold was judged, where the person wished it', async () => {
    const { computer, hold } = await sweptWith(true);
    await hold('flicker');
    expect(computer.taught).toEqual([take]);
    await hold('flicker');
    expect(computer.taught).toEqual([take, { ...take, learned: true }]);
  });

  test('are not learned where nobody wished it', async () => {
    const { computer, hold } = await sweptWith(false);
    await hold('flicker');
    await hold('flicker');
    expect(computer.taught).toEqual([take]);
  });

  test('are not learned when they were taken back', async () => {
    const { computer, hold } = await sweptWith(true);
    await hold('flicker', 'undo');
    await hold('delayed');
    await hold('delayed');
    expect(computer.taught).toEqual([take]);
  });

  test('are learned by the second saying, and not the first, when they were asked back', async () => {
    const { computer, window, hear } = await sweptWith(true);
    await hear('holding');
    await hear('flicker', true);
    await hear('flicker', true);
    await window.tell('finish');
    expect(computer.taught).toEqual([take, { ...take, learned: true }]);
  });
});

describe('one switch', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  async function start() {
    const { computer, window } = await sweeping();
    const wait = async (ms: number): Promise<void> => {
      computer.time = moment(computer.time + ms);
      await vi.advanceTimersByTimeAsync(ms);
      await settle();
    };
    const press = async (ms: number): Promise<void> => {
      window.session.contact('down');
      await wait(ms);
      window.session.contact('up');
      await settle();
    };
    return { computer, window, wait, press };
  }

  test('a whole hold by one switch: begin, and it came late', async () => {
    const { window, wait, press } = await start();
    window.session.contact('down');
    expect(phaseOf(window)).toBe('holding');
    expect(window.session.pressed.value).not.toBeNull();
    window.session.contact('up');
    expect(window.session.pressed.value).toBeNull();
    await wait(1500);
    await press(80);
    await wait(100);
    await press(80);
    expect(window.session.sweep.value?.holds.at(-1)).toMatchObject({ by: 'switch', verdict: { light: 'late' } });
  });

  test('a single press is told after the time for a second one', async () => {
    const { window, wait, press } = await start();
    await press(80);
    await wait(1500);
    await press(80);
    expect(phaseOf(window)).toBe('holding');
    await wait(400);
    expect(window.session.sweep.value?.holds.at(-1)?.verdict.light).toBe('flicker');
  });

  test('a switch kept down from the beginning of a hold takes nothing back and books nothing: the hold goes on, and is explained', async () => {
    const { computer, window, wait, press } = await start();
    await window.tell('holding');
    await window.tell('flicker');
    await press(2500);
    await wait(10);
    expect(phaseOf(window)).toBe('holding');
    expect(window.session.sweep.value?.holds).toHaveLength(1);
    expect(computer.journal()).toEqual(['opened', 'began', 'judged', 'began']);
    expect(computer.log.at(-1)).toBe('say Tap to begin, then keep only the camera\u2019s button pressed. Press twice to undo.');
  });

  test('after such a long press two presses take back that hold and the verdict before it', async () => {
    const { computer, window, wait, press } = await start();
    await window.tell('holding');
    await window.tell('flicker');
    await press(700);
    await wait(200);
    expect(window.session.understood.value?.presses).toContainEqual({ press: 'double', means: 'undo' });
    await press(60);
    await press(60);
    await wait(10);
    expect(phaseOf(window)).toBe('dialling');
    expect(window.session.sweep.value?.holds).toEqual([]);
    expect(computer.journal()).toEqual(['opened', 'began', 'judged', 'began', 'undid', 'undid']);
  });

  test('a press within 0.7 s of the hold’s beginning is asked about, the same press again counts, and silence leaves the hold alone', async () => {
    const { computer, window, wait, press } = await start();
    await press(50);
    await wait(400);
    await press(50);
    await wait(500);
    expect(phaseOf(window)).toBe('holding');
    expect(window.session.pressAsked.value).toMatchObject({ about: 'short' });
    expect(computer.log.at(-1)).toBe('say Did it flicker already? Press again if it did. If not, keep holding.');
    expect(computer.journal()).toEqual(['opened', 'began']);
    await press(50);
    await wait(500);
    expect(window.session.sweep.value?.holds.map(({ verdict }) => verdict.light)).toEqual(['flicker']);
  });
});
