/** Periods with astronomical years (1 BC is 0). Spans without “from memory” are those printed in PeriodO’s public-domain data. */
export const PERIODS = [
  { key: 'minoan', name: 'Minoan', from: -2699, to: -1099, also: 'Crete, Knossos', note: 'Span from memory.' },
  { key: 'hallstatt', name: 'Hallstatt', from: -1199, to: -479, also: 'early Iron Age' },
  { key: 'etruscan', name: 'Etruscan', from: -899, to: -26, also: 'Etruria, Tuscany', note: 'Span from memory.' },
  { key: 'latene', name: 'La Tène', from: -479, to: -49, also: 'Celtic, Iron Age, la tene' },
  { key: 'hellenistic', name: 'Hellenistic', from: -322, to: -30, also: 'Greek, Alexandria' },
  { key: 'coptic', name: 'Coptic', from: 284, to: 641, also: 'Egypt', note: 'Span from memory.' },
  { key: 'carolingian', name: 'Carolingian', from: 768, to: 887, also: 'Frankish, Charlemagne' },
  { key: 'ottoman', name: 'Ottoman', from: 1453, to: 1922, also: 'Turkey, Istanbul' },
  { key: 'georgian', name: 'Georgian', from: 1714, to: 1830, also: 'eighteenth century' },
  { key: 'nouveau', name: 'Art Nouveau', from: 1890, to: 1910, also: 'Jugendstil', note: 'Span from memory.' },
  { key: 'stage', name: 'Stage and screen', also: 'props, theatre', note: 'A topic without a span of years.' },
];
