/** Methods for drops, riffles and the seepage under them. */
import type { MethodTexts } from './method_texts';

export const drops: MethodTexts = {
  labels: {
    'velocity on the face': 'velocidad en la cara',
    'constant of the equation': 'constante de la ecuación',
    'velocity used': 'velocidad usada',
    'V·S^0.17/(Ss−1)^0.66': 'V·S^0.17/(Ss−1)^0.66',
    "Manning's n of that rock, not grouted": 'n de Manning de esa roca, sin mortero',
    'velocity of the approach': 'velocidad de llegada',
    'depth of the approach': 'tirante de llegada',
    'median size of the type': 'tamaño mediano del tipo',
    'rock layer': 'capa de roca',
    'apron at the foot': 'delantal en el pie',
    'rise of the crest wall': 'altura del muro de cresta',
    'depth of water over the face': 'tirante sobre la cara',
    'slope of the downstream face': 'pendiente de la cara de aguas abajo',
    'multiplies the diameter': 'multiplica el diámetro',
    'tractive force': 'fuerza tractiva',
    'diameter that is just moved': 'diámetro que apenas se mueve',
    'diameter of the riffle rock': 'diámetro de la roca del rápido',
    'height of the drop': 'altura de la caída',
    'critical depth over the crest': 'tirante crítico sobre la cresta',
    'critical velocity': 'velocidad crítica',
    'least energy over the crest': 'energía mínima sobre la cresta',
    'Vc·S^0.17/(Ss−1)^0.66': 'Vc·S^0.17/(Ss−1)^0.66',
    'nominal boulder': 'bolón nominal',
    'thickness of the grout': 'espesor del mortero',
    'contact flatter than 45°': 'contacto más tendido que 45°',
    'contact steeper than 45°, both faces of a cut-off':
      'contacto más empinado que 45°, ambas caras de una pantalla',
    'the ground under the drop': 'el terreno bajo la caída',
    'weighted way of seepage': 'recorrido de filtración ponderado',
    'weighted creep ratio': 'relación de filtración ponderada',
    'least ratio for the soil': 'relación mínima para el suelo',
    'weighted length needed': 'longitud ponderada necesaria',
    'weighted length missing': 'longitud ponderada que falta',
    'critical depth': 'tirante crítico',
    'drop over critical depth': 'caída sobre tirante crítico',
    'floor block, upstream face 1:2': 'bloque de piso, cara de aguas arriba 1:2',
    'end sill, upstream face 3:1': 'umbral final, cara de aguas arriba 3:1',
  },
  cautions: {
    'Take the unit discharge of the main channel or the notch in the crest, not the total over the full width.':
      'Tome el caudal unitario del cauce principal o de la escotadura de la cresta, no el total sobre todo el ancho.',
    'A spillway sheet of a 1992 permit works with 5.8 in place of 4.5, which gives rock 40 % smaller: say which constant a design stands on.':
      'La planilla de vertedores de un permiso de 1992 usa 5.8 en lugar de 4.5, lo que da roca 40 % menor: diga en qué constante se basa un diseño.',
    'At transitions: the greatest velocity raised by 20 %, rock 5 ft upstream and 10 ft downstream.':
      'En las transiciones: la velocidad máxima aumentada en 20 %, roca 5 ft aguas arriba y 10 ft aguas abajo.',
    'Seepage under the drop can undo it whatever its rock: check the weighted creep.':
      'La filtración bajo la caída puede arruinarla sea cual sea su roca: verifique la filtración ponderada.',
    'Only the row for 25 ft²/s could be read; it is used for every smaller unit discharge, where it asks for more than it must.':
      'Solo se pudo leer la fila de 25 ft²/s; se usa para todo caudal unitario menor, donde pide más de lo necesario.',
    'On a face of 10H:1V the table has smaller rock than the equation of velocity and slope at a specific gravity of 2.5.':
      'En una cara de 10H:1V la tabla tiene roca menor que la ecuación de velocidad y pendiente con densidad relativa 2.5.',
    'The piping check (weighted creep) is a step of its own.':
      'La verificación de tubificación (filtración ponderada) es un paso aparte.',
    'Customary faces: about 20H:1V downstream, 4H:1V upstream.':
      'Caras usuales: unos 20H:1V aguas abajo, 4H:1V aguas arriba.',
    'The largest rocks on the crest and face carry the riffle; the voids must be filled with graded smaller rock so that low flow stays on top.':
      'Las rocas más grandes, en la cresta y la cara, sostienen el rápido; los vacíos deben llenarse con roca menor graduada para que el estiaje corra por encima.',
    'Boulders of one size; grout from the subgrade to half the nominal rock, never above two thirds of its least dimension.':
      'Bolones de un solo tamaño; mortero desde la subrasante hasta la mitad de la roca nominal, nunca más arriba de dos tercios de su dimensión menor.',
    'Above a drop of 5 ft a full hydraulic and seepage design is asked for.':
      'Por encima de una caída de 5 ft se pide un diseño hidráulico y de filtraciones completo.',
    'Seepage and uplift: check the weighted creep and the drains under the grout.':
      'Filtración y subpresión: verifique la filtración ponderada y los drenes bajo el mortero.',
    'A screen, not a seepage analysis: layered ground, open gravel and defects need one.':
      'Un primer examen, no un análisis de filtración: terreno estratificado, grava abierta y defectos necesitan uno.',
    'Filters and drains at the foot matter as much as the length.':
      'Los filtros y drenes al pie importan tanto como la longitud.',
    'A least tailwater belongs to the design; it is not in the abstract.':
      'El diseño lleva un tirante mínimo aguas abajo; no está en el resumen.',
    'Entrance face 2H:1V; the rock below the sill is sized by itself.':
      'Cara de entrada 2H:1V; la roca aguas abajo del umbral se dimensiona aparte.',
  },
};
