// @vitest-environment node
import { expect, it } from 'vitest';
import { collections, resolved } from './document_schema';
import { tabbed } from '../table_copy';
import { cellsOf, columnsOf, withCells } from './table_input';

it('puts the cells of a spreadsheet in from one cell on, and adds the rows they need', () => {
  const rows = [{ station: '0 ft', elevation: '9 ft' }, { station: '4 ft' }];
  const text = '8 ft\t0.04\t\r\n7 ft\t0.03\r\n6.5 ft\t0.03\r\n';
  const columns = ['station', 'elevation', 'roughness'];
  expect(withCells(rows, columns, { row: 1, column: 1 }, text)).toEqual([
    { station: '0 ft', elevation: '9 ft' },
    { station: '4 ft', elevation: '8 ft', roughness: '0.04' },
    { elevation: '7 ft', roughness: '0.03' },
    { elevation: '6.5 ft', roughness: '0.03' },
  ]);
  expect(rows[1]).toEqual({ station: '4 ft' });
});

it('gives its rows to a spreadsheet so that they can be put back as they were', () => {
  const rows = [
    { station: '0 ft', elevation: '9 ft', roughness: '0.04' },
    { station: '4 ft', elevation: '', roughness: '0.03' },
  ];
  const columns = ['station', 'elevation', 'roughness'];
  const text = tabbed(cellsOf(rows, columns));
  expect(withCells([], columns, { row: 0, column: 0 }, text)).toEqual(rows);
});

it('is for rows of a few short answers', () => {
  const zone = resolved(collections.get('zones') ?? {}).properties ?? {};
  expect(columnsOf(resolved(zone.kinds ?? {}))?.map(([key]) => key)).toEqual([
    'kind',
    'up_to',
    'reason',
  ]);
  const reach = resolved(collections.get('reaches') ?? {}).properties ?? {};
  expect(columnsOf(resolved(reach.sections ?? {}))).toBeUndefined();
});
