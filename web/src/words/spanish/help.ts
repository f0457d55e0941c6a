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
  units: 'Las cifras del manual están en las unidades de sus fuentes.',
};
