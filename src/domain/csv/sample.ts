/** A worked list of an invented studio, for looking at how one may be written. It has new things of each kind and two slips. */
const LINES = [
  'Mould no,Design,Size,Period,Cabinet,Drawer,Rubber,Purpose,Cavities,Made,Shots so far,Condition,Faults,Wax g,Note',
  'K-001,Lyre-player seal,18 mm,Minoan,Cabinet A,A1,natural,production,1,2019-03-14,212,worn,flash,4.2,Trim the gate short.',
  'K-002,Lyre-player seal,18 mm,Minoan,Cabinet A,A1,platinum silicone,production,1,2024-05-02,36,sound,,4.2,',
  'K-003,Octopus pendant,,Minoan,Cabinet A,A2,natural,intermediate,1,2018-11-20,3,sound,,9.5,Only for waxes to dress.',
  'K-004,Running-hare toggle,small,La Tène,Cabinet A,A4,tin silicone,production,2,2022-01-17,88,watch,sticking,6,"Two cavities, one sprue."',
  'K-005,Running-hare toggle,large,La Tène,Cabinet A,A4,vulcanised silicone,production,1,2023-09-08,140,good,,7.8,',
  'K-006,Harness mount with two birds,,La Tène,Cabinet A,A5,natural,production,1,2016,510,failed,"torn gate, lost detail",14,Replaced by K-007.',
  'K-007,Harness mount with two birds,,La Tène,Cabinet A,A5,natural,production,1,2024-02-29,60,sound,,14,',
  'K-008,Poppy signet ring,52,Art Nouveau,Cabinet B,B1,gold label,production,1,2021-06-30,75,sound,,3.6,Mouldkeep does not know this rubber: it is kept in the note.',
  'K-009,Poppy signet ring,56,Art Nouveau,Cabinet B,B1,natural,production,1,2021-02-30,41,sound,,3.9,There is no 30 February: this line cannot be read.',
];

export const SAMPLE_NAME = 'mouldkeep-sample-list.csv';

/** With the byte order mark by which a spreadsheet knows UTF-8. */
export function sampleList(): string {
  return `\ufeff${LINES.join('\r\n')}\r\n`;
}
