import { seed } from './sweep-notes.ts';
import { sweepPlans } from './sweep-plans.ts';

sweepPlans(250, seed);
