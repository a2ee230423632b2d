// Words in a table, each with what it means and its key.
import { capOf } from '../keys/keys.ts';
import type { Word } from '../../sweep/inputs.ts';
import { words } from '../../words/catalogue.ts';
import { taught } from '../../words/taught.ts';

export function WordRows({ of }: { readonly of: readonly Word[] }) {
  const say = words('help').spoken;
  return (
    <table class="word-rows">
      <thead>
        <tr>
          <th scope="col">{say.say}</th>
          <th scope="col">{say.means}</th>
          <th scope="col">{say.key}</th>
        </tr>
      </thead>
      <tbody>
        {of.map((word) => (
          <tr key={word}>
            <th scope="row">{word === 'set' ? say.set : taught(word)}</th>
            <td>{say.meanings[word]}</td>
            <td>
              <kbd>{capOf(word)}</kbd>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
