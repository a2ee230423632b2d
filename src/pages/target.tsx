// Prints the target of one rig, and the ramp beside it, at true size: a side panel is too narrow to print from. What to
// draw stands in the address.
import { render } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { BenchFault } from '../optics/fault.ts';
import { measureTarget } from '../optics/print/measure.ts';
import { readOrder, type TargetOrder } from '../optics/print/order.ts';
import { drawRamp } from '../optics/print/ramp.ts';
import { PAPERS, sheets, type PaperName } from '../optics/print/sheets.ts';
import { drawTarget, SCALE } from '../optics/print/target.ts';
import { got, type Result } from '../result.ts';
import { readWords, words } from '../words/catalogue.ts';
import { countryInUse } from '../words/countryInUse.ts';
import { wearPageLanguages } from './pageLanguage.ts';
import { PrintButton } from './printButton.tsx';

interface Drawn {
  readonly target: readonly string[];
  readonly ramp: readonly string[];
}

/** All pages for this paper as SVG, or why there are none. */
function drawn(order: TargetOrder, paper: PaperName): Result<Drawn, BenchFault> {
  const say = words('print');
  const measure = measureTarget(order);
  if (!measure.ok) return measure;
  const target = drawTarget(measure.value, { words: [...order.words, say.sizes(measure.value.bar, SCALE)], scale: say.scale(SCALE) });
  const ramp = drawRamp(order.depth ?? 'infinite', { words: [say.ramp, ...order.words], depth: say.depth });
  return got({
    target: sheets(target.drawing, paper, say.sheets.target).map(({ svg }) => svg),
    ramp: sheets(ramp.drawing, paper, say.sheets.ramp).map(({ svg }) => svg),
  });
}

/** One page out of its SVG; text from the address was escaped where it was drawn. */
function Sheet({ svg }: { readonly svg: string }) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    box.current?.replaceChildren(document.importNode(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true));
  }, [svg]);
  return <div ref={box} class="sheet" />;
}

const NAMES = Object.keys(PAPERS) as readonly PaperName[];

function TargetPage({ order }: { readonly order: TargetOrder | null }) {
  const say = words('print').page;
  const [paper, setPaper] = useState<PaperName>(order?.paper ?? countryInUse.value.paper);
  const pages = order && drawn(order, paper);
  const saying = pages === null ? say.noOrder : pages.ok ? say.drawn(pages.value.target.length) : say.fault(pages.fault);
  return (
    <>
      <main>
        <h1>{say.title}</h1>
        <output id="says">{saying}</output>
        {order && (
          <fieldset>
            <legend>{say.paper}</legend>
            {NAMES.map((name) => (
              <label key={name} class="option">
                <input type="radio" name="paper" value={name} checked={name === paper} onChange={() => setPaper(name)} /> {say.papers[name]}
              </label>
            ))}
          </fieldset>
        )}
        {pages?.ok && (
          <p>
            <PrintButton />
          </p>
        )}
      </main>
      <div id="sheets" data-paper={paper}>
        {pages?.ok && [...pages.value.target, ...pages.value.ramp].map((svg, index) => <Sheet key={index} svg={svg} />)}
      </div>
    </>
  );
}

/** Not awaited by the script itself: whatever it reads on demand waits until the script has run. */
async function draw(): Promise<void> {
  await wearPageLanguages();
  await readWords('paper', 'print');
  document.title = words('print').page.title;
  const place = document.querySelector('#target');
  if (place) render(<TargetPage order={readOrder(location.hash.slice(1))} />, place);
}

addEventListener('hashchange', () => location.reload());
void draw();
