/** The handbook within the application. */
import type { help as English } from '../english/help';

export const help: typeof English = {
  place: 'Ayuda',
  heading: 'Ayuda',
  opening: 'Abriendo el manual …',
  notOpened:
    'No se pudo abrir el manual. Queda en el equipo una vez que la aplicación se abrió con conexión.',
  back: 'Atrás',
  all: 'Todo el manual',
  search: 'Buscar palabras',
  found: (number) =>
    number === 0
      ? 'Ninguna página contiene todas estas palabras.'
      : number === 1
        ? '1 página contiene estas palabras.'
        : `${number} páginas contienen estas palabras.`,
  noSuchPage: 'El manual no tiene esa página.',
  aboutMethod: 'Sobre este método',
  inTheField: 'Cómo se hace',
  words: 'Qué significan las palabras',
  inEnglish: 'Esta página solo existe en inglés.',
  someInEnglish:
    '«En el campo» y «Qué significan las palabras» están en español; las páginas de los métodos, con sus fuentes, en inglés. Busque también con palabras inglesas.',
  groups: {
    First: 'Primero',
    'rock size': 'Tamaño de la roca',
    layer: 'Capa',
    toe: 'Pie',
    scour: 'Socavación',
    soil: 'Suelo',
    filter: 'Filtro',
    mix: 'Mezcla',
    cover: 'Cubierta',
    quantities: 'Cantidades',
    water: 'Agua',
    evidence: 'Evidencia',
    reliability: 'Confiabilidad',
    Catalog: 'Catálogo',
    'How far to trust it': 'Hasta dónde confiar',
  },
  units: 'Las cifras del manual están en las unidades de sus fuentes.',
};
