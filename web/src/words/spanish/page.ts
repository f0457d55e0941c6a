/** The page round every screen. */
import type { page as English } from '../english/page';
import { readEngine } from './engine_texts';

export const page: typeof English = {
  product: 'Proofstone',

  skipToFindings: 'Saltar a los hallazgos',

  skipToContent: 'Saltar a la página',

  places: {
    label: 'Partes de Proofstone',
    findings: 'Hallazgos',
    field: 'Campo',
    desk: 'Gabinete',
  },

  code: 'es',
  language: 'Idioma',
  asWritten: { lang: 'en' },
  writtenInEnglish:
    'Lo que escribe el motor de cálculo se muestra aquí traducido. El registro técnico está en inglés, y el ingeniero responsable firma ese texto y no la traducción.',
  outcomes: {
    meets: 'cumple',
    'falls short': 'no cumple',
    'not yet known': 'aún no se sabe',
    'ask the designer': 'consultar al proyectista',
  },
  readEngine,

  units: {
    label: 'Unidades',
    names: { us: 'US', si: 'SI' },
    meanings: {
      us: 'Unidades inglesas, usuales en Estados Unidos',
      si: 'Unidades del SI',
    },
  },

  appearance: {
    names: {
      system: 'Como el equipo',
      light: 'Claro',
      dark: 'Oscuro',
    },
    button: (now, next) => `Aspecto: ${now}. Cambiar a: ${next}`,
  },

  headline: {
    opening: 'Abriendo la obra y calculando sus hallazgos …',
    working: 'Calculando …',
    example: 'Obra de ejemplo, inventada',
    device: 'Leída de archivos de este equipo y guardada aquí. No se envía nada.',
    deviceNotKept: 'Leída de archivos de este equipo. No se envía nada.',
    changedExample:
      'Obra de ejemplo, inventada, con lo que usted le agregó. Guardada en este equipo.',
    revision: (id) => `Revisión ${id}`,
  },

  portions: {
    more: (number) => `Mostrar ${number} más`,
    shown: (shown, all) => `Se muestran ${shown} de ${all}.`,
  },

  judging: {
    running:
      'El motor de cálculo evalúa toda la obra y eso tarda un poco. Siga trabajando; lo que aparece aquí es de antes.',
    coming: 'Los hallazgos están llegando.',
    seconds: (seconds) => `${seconds} s hasta ahora`,
    end: 'Detener',
    ended: 'Detenido. Lo que aparece aquí es anterior a su último cambio.',
    again: 'Evaluar ahora',
  },

  offline: {
    connectedStored:
      'El equipo tiene conexión. La aplicación está almacenada y también funciona sin señal.',
    connectedStoring: 'El equipo tiene conexión. Almacenando la aplicación para usarla sin señal …',
    connectedOnly:
      'El equipo tiene conexión. Este navegador no almacena la aplicación, así que necesita conexión para abrirse.',
    aloneStored: 'Sin señal. Aquí todo funciona sin ella.',
    aloneNotStored:
      'Sin señal, y la aplicación aún no está almacenada. Mantenga abierta esta página.',
    install: 'Instalar en este equipo',
    newVersion: 'Hay una versión nueva de Proofstone.',
    useNow: 'Cargarla ahora',
    later: 'Después',
  },

  room: {
    held: (used, all) => `Este equipo usa ${used} para ello, de unos ${all}.`,
    short:
      'Queda poco espacio en este equipo. Guarde la obra y libere espacio antes de seguir anotando.',
  },

  failures: {
    heading: 'Ahora no se pueden calcular los hallazgos',
    sentences: {
      unsupported:
        'Este navegador no puede ejecutar el motor de cálculo. Use una versión actual de Chrome, Edge, Firefox o Safari, o actualice este.',
      'not loaded':
        'No se pudo cargar el motor de cálculo. Revise la conexión con el lugar de donde vino esta página e intente de nuevo.',
      stopped:
        'El motor de cálculo se detuvo dos veces con esta obra. Sus archivos no cambiaron. Intente de nuevo; si se detiene otra vez, conserve los archivos e informe del caso, pues ninguna obra debería causarlo.',
      'too slow':
        'El motor de cálculo no respondió durante mucho tiempo y fue detenido. Cierre otros programas de este equipo e intente de nuevo.',
    },
    detail: 'Lo que informó el navegador',
    retry: 'Intentar de nuevo',
  },

  cautions: {
    heading: 'Precauciones',
    engineer:
      'Los hallazgos apoyan, y nunca reemplazan, el criterio del ingeniero responsable habilitado ni los criterios locales.',
    engine: (version) => `Motor de cálculo ${version}`,
  },
};
