import { expect, it } from 'vitest';
import { useSession, views } from './harness.ts';

const session = useSession();
const small = { width: 1024, height: 700 };

/** Controls that no scrolling brings fully into the window, or that lie under another element; and sideways scroll. */
function faults(): string[] {
  const found: string[] = [];
  const wide = document.documentElement.scrollWidth - window.innerWidth;
  if (wide > 0) found.push(`the page is ${wide} px too wide`);
  const main = document.querySelector('main')!;
  if (main.scrollWidth > main.clientWidth)
    found.push(`main is ${main.scrollWidth - main.clientWidth} px too wide`);
  const controls = document.querySelectorAll<HTMLElement>(
    'button, input:not([type="file"]), select, summary, h1, h2',
  );
  for (const control of controls) {
    if (!control.checkVisibility({ visibilityProperty: true }) || control.closest('.visually-hidden'))
      continue;
    control.scrollIntoView({ block: 'center', inline: 'nearest' });
    const box = control.getBoundingClientRect();
    const words = `${control.tagName.toLowerCase()} “${(control.getAttribute('aria-label') ?? control.textContent ?? '').trim().slice(0, 40)}”`;
    if (box.width === 0 || box.height === 0) continue;
    if (
      box.left < -1 ||
      box.right > window.innerWidth + 1 ||
      box.top < -1 ||
      box.bottom > window.innerHeight + 1
    )
      found.push(`${words} is cut: ${[box.left, box.top, box.right, box.bottom].map(Math.round).join(' ')}`);
    const top = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
    const own =
      top !== null &&
      (control.contains(top) || top.contains(control) || top.closest('label')?.contains(control));
    if (!own)
      found.push(`${words} lies under ${top?.tagName.toLowerCase()}.${top?.getAttribute('class') ?? ''}`);
  }
  return found;
}

it('at 1024 × 700 nothing essential is cut or covered and no view scrolls sideways, while a change is tried too', async () => {
  const { page } = session;
  await session.sheet();
  await page.setViewportSize(small);
  const found: Record<string, string[]> = {};
  const look = async (what: string) => {
    await session.settled();
    const problems = await page.evaluate(faults);
    if (problems.length > 0) found[what] = problems;
  };
  for (const { name, heading } of views) {
    await session.view(name);
    await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor();
    await look(name);
  }
  await session.view('Places');
  await page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name: 'Outdoors' }).click();
  await page.getByRole('heading', { level: 1, name: 'Outdoors' }).waitFor();
  await look('Outdoors');
  await session.view('Winter sheet');
  await page.getByRole('slider', { name: 'Heater set to, by night' }).press('ArrowRight');
  await page.getByRole('region', { name: 'What the change does' }).waitFor();
  await look('trial');
  expect(found).toEqual({});
});

it('the months stay on top of the bands that scroll below them', async () => {
  const { page } = session;
  await page.setViewportSize(small);
  await session.sheet();
  const covered = await page.evaluate(() => {
    const board = document.querySelector('[role="presentation"]')!.parentElement!;
    const found = new Set<string>();
    for (let top = 0; top < board.scrollHeight; top += 9) {
      board.scrollTop = top;
      for (const label of board.querySelectorAll('svg text')) {
        if (label.textContent?.trim() !== 'Jan') continue;
        const box = label.getBoundingClientRect();
        const over = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
        if (over?.closest('section'))
          found.add(over.closest('section')!.getAttribute('aria-label') ?? 'a section');
      }
    }
    return [...found];
  });
  expect(covered).toEqual([]);
});

it('trying a change does not move the levers from under the hand', async () => {
  const { page } = session;
  await page.setViewportSize(small);
  await session.sheet();
  const slider = page.getByRole('slider', { name: 'Heater set to, by night' });
  await slider.focus();
  const before = (await slider.boundingBox())!;
  await page.keyboard.press('ArrowRight');
  await page.getByRole('region', { name: 'What the change does' }).waitFor();
  await session.settled();
  expect((await slider.boundingBox())!.y).toBeCloseTo(before.y, 0);
});
