import { expect, it } from 'vitest';
import { type HelpPage, pagesWith, textOf, withTranslated } from './handbook';

const page = (id: string, title: string, html: string): HelpPage => ({
  id,
  title,
  group: 'rock size',
  html,
});

const pages = [
  page('a', 'Isbash equation', '<p>Size of a stone, by the velocity &amp; nothing else.</p>'),
  page('b', 'Angle of a bank', '<!--picture velocity--><p>Müller measured it.</p>'),
  page('c', 'Velocity that grass bears', `<p>${'grass '.repeat(60)}shear</p>`),
];

const ids = (sought: string) => pagesWith(pages, sought).map((found) => found.page.id);

it('finds pages by all of the words, those of the title first', () => {
  expect(ids('velocity')).toEqual(['c', 'a']);
  expect(ids('VELOCITY stone')).toEqual(['a']);
  expect(ids('muller')).toEqual(['b']);
  expect(ids('rock size')).toEqual(['a', 'b', 'c']);
  expect(ids('nothing here')).toEqual([]);
  expect(ids('  ')).toEqual([]);
});

it('shows the words about what was found', () => {
  const [found] = pagesWith(pages, 'shear');
  expect(found?.about).toMatch(/^… .*grass shear$/);
  expect(textOf(pages[0] as HelpPage)).toBe('Size of a stone, by the velocity & nothing else.');
});

it('takes a page in the language of the screens where there is one', () => {
  const own = page('b', 'Ángulo de una margen', '<p>Medido.</p>');
  const taken = withTranslated(pages, [own], 'es');
  expect(taken.map(({ id, title, language }) => [id, title, language])).toEqual([
    ['a', 'Isbash equation', undefined],
    ['b', 'Ángulo de una margen', 'es'],
    ['c', 'Velocity that grass bears', undefined],
  ]);
});
