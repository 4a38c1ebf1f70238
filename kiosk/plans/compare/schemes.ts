import { schemeBehaviour, simulateScheme, type SchemeBehaviour, type SimulatedYear } from '../../../shared/sampling/risk/index.ts';
import type { LineLetter } from '../../parts/line-letters.ts';
import type { Settings } from './comparison.ts';
import type { Compared } from './compared-plan.ts';
import { expectedOf, lotsOf, spreadOf } from './read-settings.ts';
import { schemeOf, switchedPlans } from './scheme-of.ts';
import type { WorkedOut } from './turns.ts';
import { modelFor } from './values.ts';

export type Behaviours = readonly { readonly letter: LineLetter; readonly behaviour: SchemeBehaviour }[];

/** How every plan that is switched fares in the long run. @param expected the steady quality, a fraction */
export function workSchemes(plans: readonly Compared[], settings: Settings, expected: number): WorkedOut<Behaviours> {
  return async (turns, tell) => {
    const done: Behaviours[number][] = [];
    const switched = switchedPlans(plans);
    for (const each of switched) {
      tell(done.length, switched.length);
      await turns.breathe();
      done.push({ letter: each.compared.letter, behaviour: schemeBehaviour(schemeOf(each, settings), modelFor(each.compared, settings.model), expected) });
    }
    return done;
  };
}

/** A year of lots under the scheme of one plan; null where a setting is wrong or the plan is none that is switched. */
export function workYear(plans: readonly Compared[], settings: Settings, letter: LineLetter): WorkedOut<SimulatedYear | null> {
  return async (turns) => {
    await turns.breathe();
    const [lots, p, spread] = [lotsOf(settings), expectedOf(settings), spreadOf(settings)];
    const chosen = switchedPlans(plans).find(({ compared }) => compared.letter === letter);
    if (chosen === undefined || lots === null || p === null || spread === null) return null;
    return simulateScheme({ scheme: schemeOf(chosen, settings), lots, p, seed: settings.seed, spread, model: modelFor(chosen.compared, settings.model) });
  };
}
