/** Opening a site and what may be wrong with its files. */
import type { siteFiles as English } from '../english/site_files';
import { counted, problem } from '../sentences';

export const siteFiles: typeof English = {
  open: {
    button: 'Abrir otra obra',
    heading: 'Abrir otra obra',
    what: 'Una obra es un archivo site.json junto con los archivos CSV que nombra, o un ZIP de todos ellos. Elíjalos todos, elija su carpeta o suelte lo uno o lo otro en cualquier parte de esta página. Se leen en este equipo y no se envían a ningún lado.',
    chooseFiles: 'Elegir archivos',
    chooseFolder: 'Elegir una carpeta',
    examples: 'Ejemplos',
    openExample: (label) => `Abrir el ejemplo «${label}»`,
    close: 'Cerrar',
    dropHere: 'Suelte los archivos o la carpeta de una obra',
    yourFiles: 'Sus archivos',
    reading: 'Leyendo los archivos …',
  },

  newSite: {
    heading: 'Comenzar una obra nueva',
    name: '¿Cómo se llama la obra?',
    begin: 'Comenzarla',
    note: 'Una obra nueva',
  },

  problemList: {
    heading: (label) => `«${label}» todavía no se puede evaluar`,
    intro: (number) =>
      `${number === 1 ? 'Hay 1 cosa' : `Hay ${number} cosas`} por corregir. No se cambió nada en sus archivos ni se adivinó nada.`,
    allowed: 'Se admite:',
  },

  problems: {
    noDocument: (number) =>
      problem(
        'no-site-document',
        '',
        `No hay ningún documento de obra en lo que eligió (${counted(number, 'archivo', 'archivos')}).`,
        'un archivo site.json, o exactamente un archivo más que termine en .json',
      ),
    severalDocuments: (paths) =>
      problem(
        'several-site-documents',
        paths.slice(0, 3).join(', '),
        `Hay ${paths.length} documentos de obra y no queda claro cuál es.`,
        'una obra a la vez',
      ),
    tooLarge: (file) =>
      problem(
        'file-too-large',
        file,
        'Este archivo es demasiado grande para leerlo aquí.',
        'archivos de hasta 64 MB',
      ),
    noArchive: (file) =>
      problem(
        'no-archive',
        file,
        'Este no es un archivo ZIP completo; puede estar cortado.',
        'el archivo tal como se guardó',
      ),
    archiveTooLarge: (file) =>
      problem(
        'archive-too-large',
        file,
        'Este archivo ZIP contiene demasiado para leerlo aquí.',
        'hasta 2000 archivos, 64 MB de tablas y 256 MB de fotos, descomprimidos',
      ),
    archiveLeadsOut: (file) =>
      problem(
        'archive-leads-out',
        file,
        'Este archivo ZIP contiene nombres que salen de su carpeta, por lo que no se abre.',
        'un archivo ZIP guardado por esta aplicación',
      ),
    notReadable: (file) =>
      problem(
        'file-not-readable',
        file,
        'El navegador no pudo leer este archivo; quizá se movió o cambió entretanto.',
        'elegir de nuevo el archivo',
      ),
    notUtf8: (file) =>
      problem(
        'not-utf8',
        file,
        'Este archivo no es texto UTF-8.',
        'JSON y CSV guardados como UTF-8; desde una hoja de cálculo, guarde la tabla como «CSV UTF-8»',
      ),
    notKept: () =>
      problem('not-kept', '', 'Este equipo ya no guarda esa obra.', 'una de las obras de la lista'),
    engineSilent: () =>
      problem(
        'engine-silent',
        '',
        'El motor de cálculo no respondió.',
        'cargar de nuevo esta página',
      ),
    exampleNotReached: (folder) =>
      problem(
        'example-not-reached',
        `examples/${folder}`,
        'No se pudo cargar el ejemplo.',
        'cargar de nuevo esta página cuando el equipo tenga conexión',
      ),
  },
};
