/** The findings, their pictures, quantities and papers. */
import type { findings as English } from '../english/findings';

export const findings: typeof English = {
  pictures: {
    heading: 'Figuras',
    inWords: 'La figura en palabras',
    notDrawable:
      'No se pudo dibujar esta figura. Su descripción y los hallazgos siguen siendo válidos.',
  },

  findings: {
    heading: 'Hallazgos',
    show: 'Mostrar los hallazgos por resultado',
    all: 'Todos',
    counted: (number) => (number === 1 ? 'hallazgo' : 'hallazgos'),
    none: 'El motor de cálculo aún no tiene nada que decir de esta obra.',
    reach: (id) => `tramo ${id}`,
    zone: (id) => `zona ${id}`,
    lot: (id) => `lote ${id}`,
  },

  card: {
    governs: 'rige',
    next: 'Qué hacer',
    margin: 'Holgura',
    marginOf: (text) => `holgura ${text}`,
    confidence: 'Confianza en que se sostiene',
    values: 'Valores',
    steps: 'Pasos del cálculo',
    asWritten: 'Texto del registro, en inglés',
    reasons: 'Por qué',
    limits: 'Límites del método',
    kept: 'se cumple',
    notKept: 'no se cumple',
    sources: 'Fuentes',
    cautions: 'Precauciones',
    link: 'Enlace a este hallazgo',
    symbol: 'Símbolo',
    meaning: 'Significado',
    formula: 'Fórmula',
    value: 'Valor',
    unit: 'Unidad',
    source: 'Fuente',
    given: (origin) => (origin ? `dato: ${origin}` : 'dato'),
  },

  save: {
    findings: 'Guardar los hallazgos (JSON)',
    report: 'Guardar el informe (HTML)',
    specification: 'Guardar la hoja de especificaciones (HTML)',
    site: 'Guardar toda la obra (ZIP)',
  },

  papers: {
    heading: 'Documentos para imprimir y firmar',
    inEnglish:
      'El motor de cálculo redacta en inglés estos documentos, el informe y la hoja de especificaciones: son el registro que se firma.',
    'design-book': 'Memoria de diseño',
    'placing-record': 'Registro de colocación',
    lotAcceptance: (lot) => `Aceptación del lote: ${lot}`,
    day: 'Día',
    'daily-report': 'Parte diario',
    failed: 'No se pudo redactar el documento. Intente de nuevo.',
  },

  quantities: {
    heading: 'Cantidades y costo',
    counting: 'Computando …',
    none: 'No se pudieron computar las cantidades.',
    what: 'Partida',
    amount: 'Cantidad',
    cost: 'Costo',
    all: 'Todas las zonas',
    columns: ['Zona', 'Partida', 'Cantidad', 'Unidad', 'Cómo', 'Precio', 'Costo'],
    notYetKnown: 'aún no se sabe',
    inPart: (text) => `${text}, en parte`,
    costOf: (text, from) => `Costo: ${text}. Precios: ${from}.`,
    save: 'Guardar la tabla (CSV)',
  },

  tables: {
    copy: 'Copiar la tabla',
    copied: 'Copiada: se puede pegar en una hoja de cálculo.',
    notCopied: 'El navegador no permitió copiarla.',
  },
};
