import { after, blot, blur, curve, type Damage, dim, glare, grain, motion, shadow, smear } from './label-damage.ts';
import { type Grey, type Modules, paintLabel } from './label-picture.ts';

type Make = (modules: Modules, severity: number, random: () => number) => Grey;

const a_little = (random: () => number) => random() * 20;

/** What makes a label hard to read, each at a severity from 0, mild, to 1, hardly readable by anyone. The sensor is always a little grainy. */
const HARD: Readonly<Record<string, Make>> = {
  turned: (modules, _, random) => paintLabel(modules, { side: 240, turn: random() * 360 }),
  'from the side': (modules, s, random) => paintLabel(modules, { side: 260, turn: random() * 360, tilt: 15 + 50 * s }),
  unsharp: (modules, s, random) => after(paintLabel(modules, { side: 240, turn: a_little(random) }), blur(1 + Math.round(4 * s))),
  moved: (modules, s, random) => after(paintLabel(modules, { side: 240, turn: a_little(random) }), motion(4 + 14 * s, random() * 180)),
  grainy: (modules, s, random) => after(paintLabel(modules, { side: 240, turn: a_little(random) }), grain(20 + 90 * s, random)),
  dim: (modules, s, random) => after(paintLabel(modules, { side: 240, turn: a_little(random) }), dim(0.3 - 0.26 * s, 60)),
  'lamp in it': (modules, s, random) =>
    after(paintLabel(modules, { side: 240 }), glare(260 + 120 * random(), 180 + 120 * random(), 25 + 75 * s)),
  shadow: (modules, s, random) => after(paintLabel(modules, { side: 240 }), shadow(340 + 120 * random(), 0.5 - 0.4 * s)),
  'wax smeared': (modules, s, random) =>
    after(paintLabel(modules, { side: 240 }), smear(250 + 140 * random(), 170 + 140 * random(), 4 + 16 * s, 2 * random() - 1, 0.97)),
  blotted: (modules, s, random) =>
    after(
      paintLabel(modules, { side: 240, turn: a_little(random) }),
      blot(280 + 80 * random(), 200 + 80 * random(), 14 + 34 * s, random() < 0.5 ? 60 : 190),
    ),
  'round a bottle': (modules, s, random) =>
    after(paintLabel(modules, { side: 240, turn: 90 * Math.floor(random() * 4) }), curve(190 - 80 * s)),
  'small or far': (modules, s, random) => paintLabel(modules, { side: 110 - 70 * s, turn: a_little(random) }),
  inverted: (modules, _, random) => paintLabel(modules, { side: 240, turn: random() * 360, inverted: true }),
  workshop: (modules, s, random) =>
    after(
      paintLabel(modules, { side: 200, turn: random() * 360, tilt: 30 * random() }),
      smear(260 + 120 * random(), 180 + 120 * random(), 4 + 6 * s, 2 * random() - 1, 0.9),
      blur(1),
      dim(0.5 - 0.3 * s, 70),
      grain(4 + 6 * s, random),
    ),
};
export const HARDSHIPS = Object.keys(HARD);

/** A picture of a label under one of the HARDSHIPS. */
export function hardPicture(hardship: string, modules: Modules, severity: number, random: () => number): Grey {
  const make = HARD[hardship];
  if (!make) throw new RangeError(`there is no hardship called ${hardship}`);
  const sensor: Damage = grain(4, random);
  return sensor(make(modules, severity, random));
}
