/**
 * The schema of the site document, read as what the forms of the desk are made of: a field that is
 * added to it appears here by itself.
 */
import schema from '../../../schema/site.schema.json';

/** The part of JSON Schema that the document's schema is written in. */
export interface SchemaNode {
  $ref?: string;
  type?: string;
  title?: string;
  description?: string;
  properties?: Record<string, SchemaNode>;
  required?: string[];
  enum?: string[];
  const?: unknown;
  oneOf?: SchemaNode[];
  items?: SchemaNode;
  additionalProperties?: boolean | SchemaNode;
  propertyNames?: SchemaNode;
  pattern?: string;
  examples?: string[];
  default?: unknown;
  /** The collection whose items may be named here; "classes" and "methods" are those of the engine. */
  refers_to?: string;
}

interface Root {
  $defs: Record<string, SchemaNode> & {
    change: {
      allOf: {
        if: { properties: { set: { pattern: string } } };
        then: { properties: { to: SchemaNode } };
      }[];
    };
  };
}

const root = schema as unknown as Root;

/** Kinds of text whose description says nothing of the field that has them. */
const plainKinds = new Set(['length', 'number', 'id']);

/** The node with what it refers to; what stands beside a reference goes before it. */
export function resolved(node: SchemaNode): SchemaNode {
  if (node.$ref === undefined) return node;
  const { $ref, ...own } = node;
  const name = $ref.slice($ref.lastIndexOf('/') + 1);
  const { description, ...named } = resolved(root.$defs[name] ?? {});
  const says = description === undefined || plainKinds.has(name) ? {} : { description };
  return { ...named, ...says, ...own };
}

const itemPattern = /^\^\/(\w+)\/\[/;
const partPattern = /^\^\/(\w+)\$$/;

function placesMatching(pattern: RegExp): Map<string, SchemaNode> {
  const found = new Map<string, SchemaNode>();
  for (const rule of root.$defs.change.allOf) {
    const name = pattern.exec(rule.if.properties.set.pattern)?.[1];
    if (name !== undefined) found.set(name, rule.then.properties.to);
  }
  return found;
}

/** The collections of the document with the schema of one item: zones, lots … */
export const collections = placesMatching(itemPattern);

/** The parts that there is one of: the name, evidence, prices … */
export const singleParts = placesMatching(partPattern);

/** What an input for a node looks like. */
export type Shape = 'text' | 'number' | 'choice' | 'fixed' | 'variants' | 'object' | 'map' | 'list';

export function shapeOf(node: SchemaNode): Shape {
  if (node.enum) return 'choice';
  if ('const' in node) return 'fixed';
  if (node.properties) return 'object';
  if (node.oneOf) return 'variants';
  if (node.type === 'array') return 'list';
  if (node.type === 'object') return 'map';
  return node.type === 'number' || node.type === 'integer' ? 'number' : 'text';
}

/** Whether one line takes it. */
export function isSimple(node: SchemaNode): boolean {
  return ['text', 'number', 'choice', 'fixed'].includes(shapeOf(node));
}

/** What is put where something is added: nothing but what cannot be otherwise. */
export function beginningOf(node: SchemaNode): unknown {
  switch (shapeOf(node)) {
    case 'fixed':
      return node.const;
    case 'list':
      return [];
    case 'map':
      return {};
    case 'object':
      return Object.fromEntries(
        Object.entries(node.properties ?? {}).flatMap(([key, inner]) => {
          const whole = resolved(inner);
          const several = ['list', 'map'].includes(shapeOf(whole));
          const needed = several && (node.required ?? []).includes(key);
          return 'const' in whole || needed ? [[key, beginningOf(whole)]] : [];
        }),
      );
    case 'variants':
      return beginningOf(resolved(node.oneOf?.[0] ?? {}));
    default:
      return '';
  }
}

/** Whether a value is of a variant, by its form and by the words that cannot be otherwise. */
export function isOfVariant(variant: SchemaNode, value: unknown): boolean {
  switch (shapeOf(variant)) {
    case 'fixed':
      return value === variant.const;
    case 'list':
      return Array.isArray(value);
    case 'map':
      return value !== null && typeof value === 'object' && !Array.isArray(value);
    case 'object': {
      if (value === null || typeof value !== 'object' || Array.isArray(value)) return false;
      const item = value as Record<string, unknown>;
      const known = Object.entries(variant.properties ?? {});
      const fixed = known.flatMap(([key, inner]) => {
        const whole = resolved(inner);
        return 'const' in whole ? [[key, whole.const] as const] : [];
      });
      if (fixed.length > 0) return fixed.every(([key, word]) => item[key] === word);
      return Object.keys(item).every((key) => known.some(([name]) => name === key));
    }
    default:
      return typeof value === 'string' || typeof value === 'number';
  }
}
