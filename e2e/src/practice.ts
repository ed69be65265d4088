import { test as base } from './fixtures';
import { Home } from './Home';
import { learnScale, openPractice } from './openPractice';
import { Plan } from './Plan';
import { listenToCanvas } from './painted';
import { Screen } from './Screen';
import { Yard } from './Yard';

/** The practice yard, open and whole in the view, with the scale of its plan known. */
export type Practice = { readonly screen: Screen; readonly yard: Yard; readonly plan: Plan };

export const test = base.extend<{ readonly practice: Practice }>({
  practice: async ({ page, hand }, use) => {
    await listenToCanvas(page);
    await openPractice(new Home(page, hand));
    const screen = new Screen(page, hand);
    const plan = new Plan(page, hand);
    await learnScale(screen, plan);
    await use({ screen, yard: new Yard(screen), plan });
  },
});

export { expect } from './fixtures';
