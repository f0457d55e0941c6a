/** Where things were taken down. */
import type { position as English } from '../english/position';

export const position: typeof English = {
  take: 'Anotar dónde está este equipo',
  states: {
    off: 'Solo si usted quiere. Se puede quitar después.',
    looking: 'Buscando la posición. Nada espera por ella.',
    found: 'Encontrada.',
    refused: 'Este navegador no lo permite. Todo lo demás sigue sin ella.',
    'not found': 'Aún no se encuentra. Todo lo demás sigue sin ella.',
    'not available': 'Este equipo no dice dónde está. Todo lo demás sigue sin ella.',
  },
  at: (latitude, longitude, accuracy = '') =>
    `${latitude}, ${longitude}${accuracy ? `, a menos de ${accuracy}` : ''}`,
  takeOff: 'Quitar la posición',
  takeAllOff: (number) =>
    number === 1 ? 'Quitar la única posición' : `Quitar las ${number} posiciones`,
  oneByOne: 'Una por una',
  takenOff: 'Posición quitada',
  heading: 'Dónde se anotó',
  carry: (number) =>
    number === 1
      ? 'Una entrada dice dónde se anotó.'
      : `${number} entradas dicen dónde se anotaron.`,
  stillInHistory:
    'Las revisiones anteriores la conservan en este equipo. Una copia guardada puede omitirla por completo.',
  leaveOut: 'Omitir dónde se anotaron las cosas',
  leaveOutWhat:
    'En la copia que se guarda; el registro de aquí la conserva. Las fotos que puedan revelar su lugar también se quedan aquí.',
  photosLeft: (number) =>
    number === 1
      ? 'Una foto se queda aquí: puede revelar dónde se tomó.'
      : `${number} fotos se quedan aquí: pueden revelar dónde se tomaron.`,
};
