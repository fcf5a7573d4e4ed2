/**
 * `npm run bench`: one line a figure, with its target and whether it is met; exit code 1 where one is missed.
 * `npm run bench -- --no-browser` leaves out the slider.
 */
import { allMet, table } from './figures.ts';
import { placeYearFigures } from './place-year.ts';
import { sliderFigures } from './slider.ts';

const figures = placeYearFigures();
console.log(table(figures));
if (process.argv.includes('--no-browser')) {
  console.log('slider to painted sheet: left out, as asked');
} else {
  const slider = await sliderFigures();
  if (typeof slider === 'string') {
    console.log(`slider to painted sheet: not measured, ${slider}`);
  } else {
    console.log(table(slider));
    figures.push(...slider);
  }
}
process.exitCode = allMet(figures) ? 0 : 1;
