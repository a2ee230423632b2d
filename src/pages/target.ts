// Prints the target of one rig, and the ramp beside it, at true size: a side panel is too narrow to print from. What to
// draw stands in the address.
import { measureTarget } from '../optics/print/measure.ts';
import { readOrder, type TargetOrder } from '../optics/print/order.ts';
import { drawRamp } from '../optics/print/ramp.ts';
import { sheets, type PaperName } from '../optics/print/sheets.ts';
import { drawTarget } from '../optics/print/target.ts';

const says = document.querySelector('#says');
const place = document.querySelector<HTMLElement>('#sheets');
const paper = document.querySelector<HTMLFieldSetElement>('#paper');
const print = document.querySelector<HTMLButtonElement>('#print');

const RAMP_WORDS = 'Ramp: 0 line in the target\u2019s plane, top leaning back by 45\u00b0. Numbers: mm, + is behind the target.';

/** All pages for this paper as SVG, or the sentence that says why not. */
function drawn(order: TargetOrder, name: PaperName): { readonly pages: readonly string[]; readonly say: string } {
  const measure = measureTarget(order);
  if (!measure.ok) return { pages: [], say: measure.sentence };
  const target = sheets(drawTarget(measure.value, order.words).drawing, name, 'Target');
  const ramp = sheets(drawRamp(order.depth ?? 'infinite', [RAMP_WORDS, ...order.words]).drawing, name, 'Ramp');
  const count = target.length === 1 ? 'The target is on one sheet' : `The target is on ${target.length} sheets to be joined at their marks`;
  return {
    pages: [...target, ...ramp].map(({ svg }) => svg),
    say: `${count}, the ramp on the last. Print at 100 %, not fitted to the page, without margins or headers; then measure the scale with a rule.`,
  };
}

/** One page out of its SVG; text from the address was escaped where it was drawn. */
function sheet(svg: string): HTMLElement {
  const box = document.createElement('div');
  box.className = 'sheet';
  box.append(document.importNode(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true));
  return box;
}

function show(order: TargetOrder, name: PaperName): void {
  const { pages, say } = drawn(order, name);
  if (says) says.textContent = say;
  if (print) print.hidden = pages.length === 0;
  if (!place) return;
  place.dataset['paper'] = name;
  place.replaceChildren(...pages.map(sheet));
}

const read = readOrder(location.hash.slice(1));
if (!read.ok) {
  if (says) says.textContent = read.sentence;
} else {
  const order = read.value;
  show(order, order.paper);
  for (const choice of paper?.querySelectorAll('input') ?? []) {
    choice.checked = choice.value === order.paper;
    choice.addEventListener('change', () => show(order, choice.value === 'Letter' ? 'Letter' : 'A4'));
  }
  if (paper) paper.hidden = false;
  print?.addEventListener('click', () => globalThis.print());
}
addEventListener('hashchange', () => location.reload());
