import type { WaxFault } from './fault.ts';

/** What to look at before the mould is blamed, the quickest to try first. */
export const REMEDIES = [
  'wax temperature',
  'pressure',
  'clamping',
  'vents',
  'release',
  'the wax itself',
  'time in the mould',
  'the mould',
] as const;
export type Remedy = (typeof REMEDIES)[number];

export interface Cause {
  readonly look: Remedy;
  readonly says: string;
}

const at = (look: Remedy, says: string): Cause => ({ look, says });

/**
 * The usual causes of each fault (trade-facts 7). Bubbles: unitedpmr.com; bubbles under the skin and milky skin: artistryofgold.com; short
 * fill, sink and breaks: casters on ganoksin.com's Orchid, and partly from memory; flash: katadair.com, the worn parting line from memory;
 * sticking: castaldo.com and T. Weishaar on ganoksin.com; torn gate, shifted halves, bent and lost detail: common practice, no source.
 */
export const FAULT_CAUSES: Readonly<Record<WaxFault, readonly Cause[]>> = {
  flash: [
    at('pressure', 'The pressure may be too high.'),
    at('clamping', 'Clamp the mould flat between plates, with an even grip.'),
    at('wax temperature', 'Wax that is too hot runs into the parting line.'),
    at('the mould', 'A worn or curled parting line lets wax out whatever the settings.'),
  ],
  'short fill': [
    at('wax temperature', 'Wax that is too cool stops before it has filled.'),
    at('pressure', 'The pressure may be too low, or let off too soon.'),
    at('vents', 'Clear the vents: trapped air keeps the wax out.'),
    at('the mould', 'A vent that has closed up, or a cavity that needs one more, is cut anew.'),
  ],
  bubbles: [
    at('pressure', 'The pressure may be too high and whirl air in.'),
    at('wax temperature', 'Wax too hot or too cold takes air with it.'),
    at('the wax itself', 'Keep the pot at least half full, and let stirred wax stand: moisture and air come out.'),
    at('clamping', 'Hold the mould straight to the nozzle.'),
    at('vents', 'Clear the vents.'),
    at('the mould', 'A hole in the rubber shows at the same spot in every wax.'),
  ],
  'torn gate': [
    at('time in the mould', 'Taken out too soon, the sprue pulls; too late, it snaps.'),
    at('release', 'A little release at the gate.'),
    at('the mould', 'Look for a tear in the rubber at the gate: it only grows.'),
  ],
  sticking: [
    at('release', 'A light dusting or a breath of spray, and no more: it builds up in the cavity.'),
    at('time in the mould', 'Taken out too soon, soft wax clings.'),
    at('wax temperature', 'Very hot wax bites into the rubber.'),
    at('the mould', 'Dark blotches or tackiness mean contaminated or undercured rubber.'),
  ],
  sink: [
    at('pressure', 'Hold the pressure a few seconds longer.'),
    at('wax temperature', 'Hotter wax shrinks more.'),
    at('the mould', 'A heavy section may need a wider gate.'),
  ],
  broken: [
    at('time in the mould', 'Left in too long, the wax goes brittle.'),
    at('the wax itself', 'A brittle wax, a cold room, or the wrong wax for thin work.'),
    at('release', 'A little release, and flex the rubber away from the wax.'),
    at('the mould', 'A cut that no longer opens far enough breaks thin parts.'),
  ],
  bent: [
    at('time in the mould', 'Taken out too soon, it bends in the hand.'),
    at('the wax itself', 'A soft wax in a warm room: take the one for the season.'),
    at('the mould', 'A curled mould bends every wax the same way.'),
  ],
  'shifted halves': [
    at('clamping', 'Seat the keys before you clamp, with an even grip.'),
    at('pressure', 'High pressure pushes soft rubber apart.'),
    at('the mould', 'Torn or worn keys no longer hold the halves.'),
  ],
  'milky skin': [
    at('wax temperature', 'The wax is too hot.'),
    at('release', 'Too much powder or spray dulls the skin.'),
    at('the mould', 'A skin dulled by heat or release gone into the rubber shows in every wax.'),
  ],
  'lost detail': [
    at('wax temperature', 'Wax that is too cool does not reach fine lines.'),
    at('pressure', 'The pressure may be too low.'),
    at('release', 'Clean the cavity: release builds up in fine lines.'),
    at('the mould', 'Detail worn off the rubber does not come back.'),
  ],
};
