import type { CautionKey } from '../traveller/index.ts';

/**
 * One calm line a hazard. It reminds and does not instruct: no number stands here as a permission, and the site's own rules come first.
 * Hazards by step: common practice of the trade, with IARC monographs 86 and 131 for cobalt with tungsten carbide (dust, grinding).
 */
export const cautions: Readonly<Record<CautionKey, string>> = {
  dust: 'Carbide and cobalt dust harms lungs and skin and probably causes cancer (IARC): keep it out of the air and off your hands.',
  lifting: 'Carbide is heavier than it looks: use the lifting aid, or lift it together.',
  ethanol: 'Ethanol vapour catches fire and can explode: keep sparks, heat and static away.',
  press: 'The press crushes and its tools are sharp: nobody reaches in while it can move.',
  furnace: 'Furnace and charge stay hot for long and may be under pressure or vacuum: open only what is cleared to be opened.',
  inertGas: 'Nitrogen and argon have no smell and take away the air to breathe: mind the oxygen alarm, and low places most of all.',
  labChemicals: 'Etchants and acids burn, and some must never meet: know what stands before you before you pour.',
  grinding: 'Grinding mist carries dissolved cobalt to lungs and skin, and wheels can burst: extraction on, guard closed.',
  sharpEdges: 'Edges are made to cut: take pieces up so that no edge meets a finger.',
  coatingGases: 'Coating gases are toxic, corrosive or explosive: a gas alarm means leave.',
  indent: 'The indenter comes down with force and chips can fly: fingers clear, eyes covered.',
  laser: 'Laser light harms eyes and skin where the housing is open: leave door switches as they are.',
  eyes: 'Looking long and closely tires the eyes: rest them a moment after each tray.',
};

/** Stands under every caution. */
export const cautionRule = 'Follow your site’s rules and safety data sheets; where they differ from this note, they hold.';
/** Stands above cautions where they are first shown. */
export const cautionLead = 'General reminders. They do not replace your site’s instructions, the safety data sheets or the law where you work.';
export const cautionWord = 'Caution';
