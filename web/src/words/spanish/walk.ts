/** The walk along placed work, and problems met on it. */
import type { walk as English } from '../english/walk';

export const walk: typeof English = {
  walk: {
    back: 'Volver al recorrido',
    preparing: 'Preparando …',
    checks: 'Verificaciones, en el orden de la obra',
    holdPoint: 'punto de espera',
    asked: 'Se pide',
    tolerance: 'Tolerancia',
    how: 'Se mide con',
    state: 'Estado',
    result: '¿Qué ve?',
    results: { pass: 'Cumple', fail: 'No cumple', 'not yet known': 'Aún no se sabe' },
    byEye: '¿Y a ojo?',
    measured: { '': 'Según lo medido', pass: 'Cumple', fail: 'No cumple' },
    loadsOf: (material) => `Viajes de ${material} desde el último recorrido`,
    problem: 'Avisar de un problema aquí',
    note: (check) => `Recorrido: ${check}`,
  },

  problemPage: {
    heading: 'Problema',
    back: 'Atrás',
    what: '¿Qué no está según el diseño?',
    noSuchProblem: 'Esta obra no tiene ese problema.',
    open: 'Problemas sin cerrar',
    toDecide: 'Por decidir',
    toClose: 'Por ejecutar y cerrar',
    decide: (name) => `Decidir: ${name}`,
    whoDecides:
      'Qué hacer con un trabajo que no está según el diseño lo decide quien responde por el diseño; se usa tal como está solo con la aprobación del ingeniero, con su nombre.',
    decision: '¿Qué se hará?',
    kinds: {
      rework: 'Rehacerlo',
      'remove and replace': 'Retirarlo y reemplazarlo',
      'use as is': 'Usarlo tal como está',
      'measure further': 'Medir más',
    },
    approvedBy: 'Ingeniero que aprueba',
    decided: (name) => `Decidido: ${name}`,
    close: (name) => `Cerrar: ${name}`,
    beforeClosing: (decision) =>
      `Decidido: ${decision}. Ciérrelo cuando esté hecho y se haya revisado de nuevo.`,
    closed: (name) => `Cerrado: ${name}`,
    isClosed: 'Este problema está cerrado.',
  },
};
