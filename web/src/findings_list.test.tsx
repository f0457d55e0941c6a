import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, it } from 'vitest';
import answer from '../test_fixtures/assess_answer.json';
import { findingElementId, linkedFinding } from './deep_link';
import { FindingsList } from './findings_list';
import type { Findings } from './findings';

const { findings } = answer.findings as unknown as Findings;
let place: HTMLElement;

beforeEach(async () => {
  Element.prototype.scrollIntoView = () => undefined;
  linkedFinding.value = undefined;
  place = document.createElement('div');
  document.body.append(place);
  await act(() => render(<FindingsList findings={findings} />, place));
});

afterEach(() => {
  render(null, place);
  place.remove();
});

const cards = () => [...place.querySelectorAll<HTMLDetailsElement>('details.finding')];
const chip = (name: string) =>
  [...place.querySelectorAll<HTMLButtonElement>('.chip')].find((button) =>
    button.textContent?.includes(name),
  );

async function unfold(id: string): Promise<HTMLDetailsElement> {
  const card = document.getElementById(findingElementId(id)) as HTMLDetailsElement;
  await act(() => {
    card.open = true;
    card.dispatchEvent(new Event('toggle'));
  });
  return card;
}

it('shows every finding folded, with title and phrase', () => {
  expect(cards().map((card) => card.querySelector('h4')?.textContent)).toEqual(
    findings.map(({ title }) => title),
  );
  expect(cards().map((card) => card.querySelector('.phrase')?.textContent)).toEqual(
    findings.map(({ outcome }) => outcome),
  );
  expect(cards().some((card) => card.open)).toBe(false);
});

it('unfolds to everything that is needed to question a finding', async () => {
  const card = await unfold('rock-size.outer-bank.made-up-method');
  const text = card.textContent ?? '';
  for (const part of [
    'The layer needs a D30 of 7.7 in',
    'Keep the class.',
    '1.18',
    'velocity averaged over the depth',
    '= Sf·Cs·Cv·CT·d',
    '7.7 in',
    'given: section 2+40, design flood',
    'The zone lies on the outside',
    'Bed slope up to 2 %',
    'not kept',
    'Invented Manual (2001), eq. 2',
    'published (seen)',
    'Outside a published limit',
  ]) {
    expect(text).toContain(part);
  }
  expect(card.querySelectorAll('.steps tbody tr').length).toBe(4);
  const ways = [...card.querySelectorAll('.link a')].map((way) => way.getAttribute('href'));
  expect(ways).toEqual(['#/help/made-up-method', '#/finding/rock-size.outer-bank.made-up-method']);
});

it('shows margin with its limits and confidence as the engine words them', async () => {
  const card = await unfold('gradation.first-deliveries');
  expect(card.querySelector('.measures')?.textContent).toContain('0.82 (0.71 to 0.95)');
  expect(card.querySelector('.measures')?.textContent).toContain('97 %');
  expect(card.querySelector('.values')?.textContent).toContain('11.4 in');
});

it('filters by outcome and back', async () => {
  expect(chip('falls short')?.textContent).toBe('falls short 1 finding');
  await act(() => chip('falls short')?.click());
  expect(cards().length).toBe(1);
  expect(chip('falls short')?.getAttribute('aria-pressed')).toBe('true');
  await act(() => chip('All')?.click());
  expect(cards().length).toBe(findings.length);
});

it('opens the finding that the address names, even when it was filtered away', async () => {
  await act(() => chip('meets')?.click());
  await act(() => {
    linkedFinding.value = 'gradation.first-deliveries';
  });
  expect(cards().length).toBe(findings.length);
  expect(
    cards()
      .filter((card) => card.open)
      .map(({ id }) => id),
  ).toEqual([findingElementId('gradation.first-deliveries')]);
});

it('unfolds everything for printing', async () => {
  await act(() => void dispatchEvent(new Event('beforeprint')));
  expect(cards().every((card) => card.open)).toBe(true);
  await act(() => void dispatchEvent(new Event('afterprint')));
  expect(cards().some((card) => card.open)).toBe(false);
});
