import { describe, expect, test } from 'vitest';
import { decodeText } from '../../src/device/text-encoding.ts';

const words = 'Grün, La Tène – 12 €';
const utf16 = (text: string, isLittle: boolean) => {
  const bytes = new Uint8Array(text.length * 2);
  const view = new DataView(bytes.buffer);
  [...text].forEach((_, i) => {
    view.setUint16(i * 2, text.charCodeAt(i), isLittle);
  });
  return bytes;
};
const utf8 = (text: string) => new TextEncoder().encode(text);

describe('how the bytes of a list are read', () => {
  test('UTF-8, with and without its byte order mark, which is not part of the text', () => {
    expect(decodeText(utf8(words))).toEqual({ text: words, encoding: 'UTF-8' });
    expect(decodeText(utf8(`\ufeff${words}`))).toEqual({ text: words, encoding: 'UTF-8' });
  });
  test('UTF-16 either way round', () => {
    expect(decodeText(utf16(`\ufeff${words}`, true))).toEqual({ text: words, encoding: 'UTF-16' });
    expect(decodeText(utf16(`\ufeff${words}`, false))).toEqual({ text: words, encoding: 'UTF-16' });
  });
  // Node 20 reads the bytes 80 to 9F of windows-1252 as control characters; that they come out right is tested in the browser.
  test('what is not UTF-8 is Windows-1252', () => {
    expect(decodeText(Uint8Array.from([0x47, 0x72, 0xfc, 0x6e]))).toEqual({ text: 'Grün', encoding: 'Windows-1252' });
  });
  test('a list put together from both is read line by line', () => {
    const mixed = [...utf8('\ufeffGrün\r\n'), 0x47, 0x72, 0xfc, 0x6e, 10, ...utf8('La Tène')];
    expect(decodeText(Uint8Array.from(mixed))).toEqual({
      text: 'Grün\r\nGrün\nLa Tène',
      encoding: 'UTF-8, and Windows-1252 where it is not',
    });
    // A byte order mark is no part of the first heading.
    expect(decodeText(Uint8Array.from([...utf8('\ufeffName\n'), 0x47, 0x72, 0xfc, 0x6e]))).toMatchObject({ text: 'Name\nGrün' });
  });
  test('spreadsheets’ own files and pictures are refused', () => {
    expect(decodeText(Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0]))).toMatchObject({
      problem: true,
      says: expect.stringContaining('spreadsheet’s own file'),
    });
    expect(decodeText(Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0]))).toMatchObject({
      problem: true,
      says: expect.stringContaining('spreadsheet’s own file'),
    });
    expect(decodeText(Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0]))).toMatchObject({
      problem: true,
      says: expect.stringContaining('not a list'),
    });
  });
});
