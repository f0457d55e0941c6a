import { describe, expect, it } from 'vitest';
import { inLines, textsOf } from './picture_words';

function picture(texts: string): Element {
  return new DOMParser().parseFromString(
    `<svg xmlns="http://www.w3.org/2000/svg">${texts}</svg>`,
    'image/svg+xml',
  ).documentElement;
}

const line = (x: number, y: number, words: string) =>
  `<text x="${x}" y="${y}" font-size="13">${words}</text>`;

describe('texts of a picture', () => {
  it('are told apart from lines of one text', () => {
    const svg = picture(
      line(10, 20, 'key at the top, 3.00 ft wide') +
        line(10, 37, 'and 3.00 ft deep') +
        line(10, 61, 'anchor trench at the top') +
        line(40, 78, 'elsewhere') +
        line(40, 60, 'above'),
    );
    const texts = textsOf(svg).map((lines) => lines.map(({ textContent }) => textContent));
    expect(texts).toEqual([
      ['key at the top, 3.00 ft wide', 'and 3.00 ft deep'],
      ['anchor trench at the top'],
      ['elsewhere'],
      ['above'],
    ]);
  });
});

describe('words that take more room', () => {
  it('are broken into the lines there are', () => {
    const words = 'dentellón superior, 3.00 ft de ancho y 3.00 ft de profundidad';
    expect(inLines(words, 2, 28)).toEqual([
      'dentellón superior, 3.00 ft de ancho',
      'y 3.00 ft de profundidad',
    ]);
    expect(inLines(words, 1, 10)).toEqual([words]);
    expect(inLines('estacas en cuña de 18.0 in, cada 2.00 ft', 2, 23)).toEqual([
      'estacas en cuña de',
      '18.0 in, cada 2.00 ft',
    ]);
  });

  it('leave lines empty that are not needed', () => {
    expect(inLines('corto', 3, 20)).toEqual(['corto']);
    expect(inLines('', 2, 20)).toEqual(['']);
  });
});
