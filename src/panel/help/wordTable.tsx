// Every word with its key.
import { capOf } from '../keys/keys.ts';
import { WORDS } from '../../sweep/inputs.ts';
import { TAUGHT } from '../../hearing/languages/en/words.ts';
import { words } from '../../words/catalogue.ts';

export function WordTable() {
  const say = words('help').spoken;
  return (
    <section aria-labelledby="words">
      <h2 id="words">{say.title}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{say.say}</th>
            <th scope="col">{say.means}</th>
            <th scope="col">{say.key}</th>
          </tr>
        </thead>
        <tbody>
          {WORDS.map((word) => (
            <tr key={word}>
              <th scope="row">{word === 'set' ? say.set : TAUGHT[word]}</th>
              <td>{word === 'set' ? say.setMeans : words('sweep').press.means[word]}</td>
              <td>
                <kbd>{capOf(word)}</kbd>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{say.together}</p>
    </section>
  );
}
