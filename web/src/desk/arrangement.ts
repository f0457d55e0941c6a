/** How the fields of the chief forms are grouped; whatever is not named here comes under "More". */
import { strings } from '../strings';
import type { SchemaNode } from './document_schema';

const words = strings.desk.fieldGroups;

export interface FieldGroup {
  heading: string;
  fields: string[];
  /** Folded away until it is asked for, unless something stands in it. */
  folded?: boolean;
}

const arranged: Record<string, FieldGroup[]> = {
  zones: [
    {
      heading: words.place,
      fields: [
        'name',
        'place',
        'section',
        'bank',
        'toe_station',
        'top_station',
        'bend',
        'along',
        'extent',
        'water',
      ],
    },
    {
      heading: words.lining,
      fields: [
        'class',
        'source',
        'layer_thickness',
        'placement',
        'kinds',
        'conditions',
        'mix',
        'top_key',
      ],
    },
    { heading: words.below, fields: ['soil', 'filter'] },
    { heading: words.toe, fields: ['toe', 'scour'] },
    { heading: words.cover, fields: ['cover'] },
    {
      heading: words.design,
      folded: true,
      fields: [
        'channel_form',
        'turbulence',
        'near_structure',
        'governing',
        'weights',
        'method_choices',
        'freeboard',
        'uncertainty',
      ],
    },
  ],
  lots: [
    { heading: words.place, fields: ['name', 'class', 'source', 'zones'] },
    { heading: words.supply, fields: ['supply', 'reference', 'available', 'price'] },
  ],
};

/** The groups of a part of the document; one without a heading where nothing is arranged. */
export function groupsOf(part: string, node: SchemaNode): FieldGroup[] {
  const all = Object.keys(node.properties ?? {});
  const groups = arranged[part];
  if (!groups) return [{ heading: '', fields: all }];
  const named = new Set(groups.flatMap(({ fields }) => fields));
  const rest = all.filter((field) => !named.has(field));
  return rest.length === 0
    ? groups
    : [...groups, { heading: words.more, fields: rest, folded: true }];
}

/** The parts of the document in the navigation, chief ones first. */
export const navigation: { heading: string; parts: string[] }[] = [
  {
    heading: strings.desk.groups.site,
    parts: ['flow_cases', 'sections', 'reaches', 'centrelines'],
  },
  { heading: strings.desk.groups.works, parts: ['zones', 'soils', 'mixes', 'ordering', 'prices'] },
  {
    heading: strings.desk.groups.rock,
    parts: ['sources', 'submittals', 'lots', 'materials', 'classes', 'requirements', 'evidence'],
  },
];
