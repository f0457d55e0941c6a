import { expect, it } from 'vitest';
import type { Finding, Step } from '../findings';
import { methodFindings, methodRows } from './methods_compared';

const step = (symbol: string, meaning: string, text: string, formula = ''): Step => ({
  symbol,
  meaning,
  formula,
  source: '',
  si: 1,
  kind: 'length',
  value: 1,
  unit: '',
  text,
});

const finding = (id: string, more: Partial<Finding>): Finding => ({
  id,
  topic: 'rock size',
  about: { zone: 'bank', method: id },
  title: id,
  outcome: 'meets',
  sentence: '',
  next: '',
  governs: false,
  values: [{ ...step('D50', 'required stone size', '8 in'), key: 'required_size' }],
  steps: [],
  reasons: [],
  limits: [],
  sources: [],
  cautions: [],
  ...more,
});

const first = finding('first', {
  steps: [step('V', 'velocity', '9 ft/s'), step('D', 'size', '8 in', 'V²')],
  limits: [
    { sentence: 'Slope below 2 %', source: '', kept: false },
    { sentence: 'Depth above 1 ft', source: '', kept: true },
  ],
});
const second = finding('second', {
  governs: true,
  margin: { value: 1.2, text: '1.20' },
  steps: [
    step('d', 'depth', '8 ft'),
    step('V', 'velocity', '9 ft/s'),
    step('D50 min', 'smallest D50 that Class III allows', '11.5 in'),
  ],
});
const all = [
  first,
  second,
  finding('elsewhere', { about: { zone: 'bed', method: 'x' } }),
  finding('layer', { topic: 'layer' }),
  finding('no-size', { values: [] }),
];

it('takes what asks for a size in the zone, what governs first', () => {
  expect(methodFindings(all, 'bank').map(({ id }) => id)).toEqual(['second', 'first']);
});

it('puts the same input of several methods into one row, and what one alone takes together', () => {
  const rows = methodRows(methodFindings(all, 'bank'));
  const texts = (what: string) =>
    rows.find((row) => row.what === what)?.cells.map(({ text }) => text);
  expect(texts('Given: velocity')).toEqual(['V = 9 ft/s', 'V = 9 ft/s']);
  const alone = rows.find(({ what }) => what === 'Given to it alone');
  expect(alone?.cells).toEqual([{ text: '', lines: ['d = 8 ft, depth'] }, { text: '–' }]);
  // What is worked out and what the class has are no inputs.
  expect(texts('Given: size')).toBeUndefined();
  expect(texts('Given: smallest D50 that Class III allows')).toBeUndefined();
  expect(texts('The class has at least')).toEqual(['D50 min = 11.5 in', '–']);
  expect(texts('Limits not kept')).toEqual(['none stated', 'Slope below 2 %']);
  expect(texts('Asks for')).toEqual(['D50 ≥ 8 in', 'D50 ≥ 8 in']);
  expect(rows[0]?.cells[0]).toMatchObject({ outcome: 'meets', margin: '1.20' });
});
