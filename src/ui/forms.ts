import { METALS, ROUTES, SIZE_MAX } from '../domain/design.ts';
import { WAX_STATES } from '../domain/injected-wax.ts';
import { INJECTOR_PRESSURES } from '../domain/injector.ts';
import { MASTER_KINDS, MASTER_STATES } from '../domain/master.ts';
import { PURPOSES, RUBBERS } from '../domain/mould.ts';
import type { Noun } from '../domain/noun.ts';
import { PLACE_FOR, PLACE_KINDS } from '../domain/place.ts';
import { WAX_PRESSURES, WAX_USES } from '../domain/wax.ts';
import { day, type Editor, figure, lines, many, nameIfAny, one, ref, refs, sizes, text, year, yes } from './form-editor.ts';

/** A noun's form: what is asked at once, and what is folded away. */
export interface Form {
  readonly main: readonly Editor[];
  readonly more: readonly Editor[];
}

const code = text('code', 40);
const note = lines('note');
const size = text('size', SIZE_MAX);
const design = ref('design', 'design');

/** The form of each noun. A name (or a design) and a place are enough to begin with. */
export const FORMS: Readonly<Record<Noun, Form>> = {
  place: {
    main: [text('name'), one('kind', PLACE_KINDS), ref('in', 'place'), refs('periods', 'period')],
    more: [
      text('label', 24),
      one('for', PLACE_FOR),
      figure('capacity'),
      text('holder'),
      figure('widthMm', 'length'),
      figure('heightMm', 'length'),
      figure('box.x', 'length', 'Its front: from the cabinet’s left edge'),
      figure('box.y', 'length', 'Its front: from the cabinet’s top edge'),
      figure('box.w', 'length', 'Its front: width'),
      figure('box.h', 'length', 'Its front: height'),
      yes('open'),
      figure('order'),
      code,
      note,
    ],
  },
  period: { main: [text('name'), year('from'), year('to')], more: [text('also', 400), figure('order'), code, note] },
  design: {
    main: [text('name'), text('sort', 60), refs('periods', 'period'), sizes('sizes')],
    more: [many('metals', METALS), one('route', ROUTES), figure('waxGrams', 'mass'), figure('keep'), text('also', 400), code, note],
  },
  master: {
    main: [nameIfAny, design, size, one('kind', MASTER_KINDS), one('state', MASTER_STATES)],
    more: [
      text('material', 60),
      day('made'),
      refs('from', 'master', 'mould', 'injectedWax', 'casting'),
      figure('lengthMm', 'length'),
      code,
      note,
    ],
  },
  mould: {
    main: [nameIfAny, design, size, ref('master', 'master'), one('purpose', PURPOSES), one('rubber', RUBBERS)],
    more: [
      figure('cavities'),
      day('made'),
      figure('shotGrams', 'mass'),
      ref('wax', 'wax'),
      figure('injection.waxC', 'temperature', 'Wax temperature'),
      figure('injection.pressureKpa', 'pressure', 'Pressure'),
      figure('injection.holdS', 'seconds', 'Hold'),
      figure('expectedShots'),
      refs('masters', 'master'),
      code,
      note,
    ],
  },
  wax: {
    main: [text('name'), text('colour', 40), one('use', WAX_USES), one('pressure', WAX_PRESSURES)],
    more: [
      text('behaviour', 400),
      figure('roomLowC', 'temperature'),
      figure('roomHighC', 'temperature'),
      figure('injectLowC', 'temperature'),
      figure('injectHighC', 'temperature'),
      figure('pressureLowKpa', 'pressure'),
      figure('pressureHighKpa', 'pressure'),
      figure('deliveryDays', 'days'),
      figure('keepGrams', 'mass'),
      code,
      note,
    ],
  },
  injector: {
    main: [text('name'), one('pressure', INJECTOR_PRESSURES), ref('holds', 'wax')],
    more: [figure('maxKpa', 'pressure'), code, note],
  },
  injectedWax: {
    main: [nameIfAny, design, size, ref('mould', 'mould'), ref('wax', 'wax'), one('state', WAX_STATES)],
    more: [code, note],
  },
  casting: { main: [nameIfAny, design, size, one('metal', METALS), ref('mould', 'mould')], more: [ref('flask', 'flask'), code, note] },
  flask: { main: [text('name'), figure('diameterMm', 'length'), figure('heightMm', 'length')], more: [one('metal', METALS), code, note] },
  want: { main: [nameIfAny, design, size, one('metal', METALS), figure('pieces'), day('due')], more: [text('who'), code, note] },
};
