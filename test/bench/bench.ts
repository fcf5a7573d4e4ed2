/**
 * `npm run bench`: one line a figure, with its target and whether it is met; exit code 1 where one is missed or,
 * for want of a browser, not measured. `npm run bench -- --no-browser` leaves out the slider and is not held to it.
 */
import { allMet, table } from './figures.ts';
import { fieldFigures } from './field.ts';
import { lampFigures } from './lamps.ts';
import { placeYearFigures } from './place-year.ts';
import { sliderFigures } from './slider.ts';

const figures = [...placeYearFigures(), ...fieldFigures(), ...lampFigures()];
let allMeasured = true;
console.log(table(figures));
if (process.argv.includes('--no-browser')) {
  console.log('slider to painted sheet: left out, as asked');
} else {
  const slider = await sliderFigures();
  if (typeof slider === 'string') {
    allMeasured = false;
    console.log(`slider to painted sheet: not measured, ${slider}`);
  } else {
    console.log(table(slider));
    figures.push(...slider);
  }
}
process.exitCode = allMeasured && allMet(figures) ? 0 : 1;
