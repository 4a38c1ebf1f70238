import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const plan = ({ page }: Kiosk, letter: string) => page.locator('gh-choice-card').filter({ hasText: `Plan ${letter}` });

for (const portrait of [false, true]) {
  test(`a quality engineer compares a plan in force with a double one, asks why, and sees a year of lots${portrait ? ', on a tablet held upright' : ''}`, async ({ startPlant }) => {
    const plant = await startPlant();
    const engineer = await plant.openKiosk('Q-401', 'Office', { portrait });
    const { page } = engineer;
    await page.goto('/plans/plan/ROUTE-CNMG');
    await engineer.tap(page.getByRole('region', { name: /Final visual/ }).getByRole('link', { name: /Compare the risks, major/i }));
    await expect(page.getByRole('heading', { name: 'Compare plans' })).toBeVisible();

    // The plan in force has come along: its AQL, and what it asks for.
    await expect(plan(engineer, 'A').getByLabel('AQL')).toHaveValue('0.65');
    await expect(plan(engineer, 'A').getByRole('button', { name: /^n of each sample, plan A: n 80\b/ })).toBeVisible();
    await engineer.tap(button(engineer, 'Add a plan'));
    await plan(engineer, 'B').getByLabel('Samples').selectOption('double');
    await expect(plan(engineer, 'B').getByRole('button', { name: /^n of each sample, plan B: n 50 \+ 50\b/ })).toBeVisible();
    await expect(plan(engineer, 'B').getByText('unconfirmed')).toBeVisible();

    // The chart is read by keyboard alone.
    const cursor = page.getByRole('slider', { name: /Quality read out/ });
    await engineer.reach(cursor);
    await engineer.press('Home');
    await expect(cursor).toHaveAttribute('aria-valuetext', /^p 0 %: A 100\s%, B 100\s%$/);
    for (let step = 0; step < 3; step += 1) await engineer.press('PageUp');
    await expect(cursor).toHaveAttribute('aria-valuetext', /^p [\d.]+ %: A \d\d(\.\d+)?\s%, B \d\d(\.\d+)?\s%$/);
    await engineer.accessibleInEveryTheme();
    await engineer.picture(portrait ? 'plan-compare-upright' : 'plan-compare');

    // The same as a table, and every figure with its reason.
    await expect(page.getByRole('table', { name: 'Operating characteristic, as a table' }).getByRole('row')).toHaveCount(22);
    const average = page.getByRole('button', { name: /^ASN at AQL or p₁, plan B: / });
    await expect(page.getByRole('button', { name: /^ASN at AQL or p₁, plan A: 80\./ })).toBeVisible();
    await engineer.tap(average);
    const why = page.locator('gh-why-sheet');
    await expect(why.getByText(/^ASN = /)).toBeVisible();
    await expect(why.getByText(/^50 × 100 % \+ 50 × [\d.]+ % = /)).toBeVisible();
    await engineer.press('Escape');
    await engineer.tap(plan(engineer, 'A').getByRole('button', { name: /^n of each sample, plan A/ }));
    await expect(why.getByText('Lot of 1,000, level II: Table I gives letter J.')).toBeVisible();
    await expect(why.getByRole('table', { name: 'Table II-A, column AQL 0.65' }).getByRole('row', { name: /J 80 1\/2 this plan/ })).toBeVisible();
    await expect(why.getByText('seen').first()).toBeVisible();
    await engineer.accessibleInEveryTheme();
    await engineer.picture(portrait ? 'plan-why-upright' : 'plan-why');
    await engineer.tap(why.getByRole('button', { name: 'Close' }));

    // Other curves, then a year of lots at a quality that is too bad for the plan; another seed is another year.
    await engineer.tap(button(engineer, /^ASN$/));
    await expect(page.getByRole('table', { name: 'Average sample number, as a table' })).toBeVisible();
    const quality = page.getByRole('textbox', { name: 'Quality expected, %' });
    await quality.fill('1.5');
    await engineer.press('Enter');
    const notAccepted = page.getByRole('button', { name: /^Not accepted, plan A: / });
    const share = page.getByRole('button', { name: /^Tightened, plan A: / });
    await expect(share).toHaveAccessibleName(/^Tightened, plan A: [1-9]\d*(\.\d+)?\s%/);
    const first = await notAccepted.getAttribute('aria-label');
    await engineer.tap(button(engineer, 'Another seed'));
    await expect(notAccepted).not.toHaveAccessibleName(first ?? '');
    await expect(page.getByRole('table', { name: 'Lots not accepted and moves' }).getByRole('row', { name: /from here on tightened/ }).first()).toBeVisible();
    await engineer.accessible();
    await page.getByText(/one bar a lot/).scrollIntoViewIfNeeded();
    await engineer.picture(portrait ? 'plan-year-upright' : 'plan-year');

    // The address holds all of it, and nothing of it needs the network.
    const second = await notAccepted.getAttribute('aria-label');
    await page.reload();
    await expect(notAccepted).toHaveAccessibleName(second ?? '');
    await engineer.offline(true);
    await plan(engineer, 'B').getByLabel('AQL').selectOption('2.5');
    await expect(plan(engineer, 'B').getByRole('button', { name: /^Ac \/ Re, or k, plan B: Ac 2, 6 · Re 5, 7/ })).toBeVisible();
    await expect(page.getByRole('button', { name: /^Producer’s risk, plan B: \d+(\.\d+)?\s% at 2\.5\s%/ })).toBeVisible();
    await plan(engineer, 'B').getByRole('textbox', { name: 'Lot size' }).fill('many');
    await engineer.press('Tab');
    await expect(plan(engineer, 'B').getByText('A whole number from 1 to 1,000,000,000.')).toBeVisible();
    await engineer.accessible();
    await engineer.offline(false);
  });
}
