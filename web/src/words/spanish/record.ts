/** The record of this device and entries that cross. */
import type { record as English } from '../english/record';
import { counted, momentText } from '../sentences';

export const record: typeof English = {
  record: {
    troubles: {
      'no room':
        'A este equipo no le queda espacio y la última entrada no se guardó. Libere espacio e ingrésela de nuevo.',
      'not available':
        'Este navegador no permite guardar nada en el equipo y la última entrada no se guardó. Salga de la navegación privada e ingrésela de nuevo.',
      'ended elsewhere':
        'Este conteo se terminó en otra ventana. Lo contado hasta entonces está en el registro.',
      'reads otherwise':
        'Este equipo guarda otra copia de esta obra, en la que la misma revisión o el mismo archivo dice otra cosa. Lo que abrió se muestra, pero no se guarda.',
      'not written': 'La última entrada no se pudo escribir en este equipo. Ingrésela de nuevo.',
    },
    keptNow: (note) => `Guardado: ${note}.`,
    undo: 'Deshacer',
    undone: (note) => `Deshecho: ${note}`,
    redo: 'Rehacer',
    redone: (note) => `Rehecho: ${note}`,
    onThisDevice: 'Guardadas en este equipo',
    open: (name) => `Abrir «${name}»`,
  },

  conflicts: {
    heading: (number) => `${counted(number, 'entrada se cruza', 'entradas se cruzan')} con otra`,
    intro:
      'Dos personas cambiaron lo mismo sin saber una de la otra. Ambas entradas están en el registro; diga cuál es la correcta.',
    stands: 'Vale:',
    passedOver: 'No vale:',
    removed: 'quitado',
    anew: 'escrito de nuevo',
    by: (author, time) => `${author}, ${momentText(time)}`,
    right: 'Lo que vale es correcto',
    takeOther: 'Tomar la otra',
    note: 'Entradas cruzadas resueltas',
  },
};
