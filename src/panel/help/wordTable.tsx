// Every word with its key.
import { capOf } from '../keys/keys.ts';
import { WORDS, type Word } from '../../sweep/inputs.ts';
import { TAUGHT } from '../../voice/vocabulary/en.ts';
import { words } from '../../words/catalogue.ts';

export function WordTable() {
  return (
    <section aria-labelledby="words">
      <h2 id="words">Words and keys</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Say</th>
            <th scope="col">It means</th>
            <th scope="col">Key</th>
          </tr>
        </thead>
        <tbody>
          {WORDS.map((word) => (
            <tr key={word}>
              <th scope="row">{word === 'set' ? 'set plus 6' : TAUGHT[word]}</th>
              <td>{meaningOf(word)}</td>
              <td>
                <kbd>{capOf(word)}</kbd>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>A light and an arrow may be said together: {'\u201c'}flicker left{'\u201d'}.</p>
    </section>
  );
}

const meaningOf = (word: Word): string => (word === 'set' ? 'set a value of your own' : words('sweep').press.means[word]);
