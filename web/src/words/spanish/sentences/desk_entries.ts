/** What is wrong with what is typed at the desk, and with tables. */
export const deskEntries: Record<string, string> = {
  // Soils, filters, mixes.
  'No soil has this.': 'Ningún suelo tiene esto.',
  'Plastic limit and plasticity index say the same.':
    'El límite plástico y el índice de plasticidad dicen lo mismo.',
  'one of the two': 'uno de los dos',
  'The plasticity index is not between 0 and the liquid limit.':
    'El índice de plasticidad no está entre 0 y el límite líquido.',
  'a plastic limit below the liquid limit': 'un límite plástico menor que el límite líquido',
  'A fabric has openings (AOS, O95).': 'Un geotextil tiene aberturas (AOS, O95).',
  'Layers from the soil upward belong here.': 'Aquí van las capas del suelo hacia arriba.',
  'No material on offer has this value.': 'Ningún material ofrecido tiene este valor.',
  'This material is named twice.': 'Este material se nombra dos veces.',
  'each material once': 'cada material una vez',
  'A part is more than nothing.': 'Una parte es más que nada.',
  'The recipe takes soil of the place.': 'La receta lleva suelo del lugar.',
  'the id of a material': 'el id de un material',
  'A mix has a recipe or parts of its own.': 'Una mezcla tiene receta o partes propias.',
  'No rock has this price.': 'Ninguna roca tiene este precio.',
  'A mix has rock.': 'Una mezcla tiene roca.',
  'Parts of rock without parts of fill make no mix.':
    'Partes de roca sin partes de relleno no hacen una mezcla.',
  'parts beside them, or neither': 'las otras partes también, o ninguna',

  // Linings.
  'Nothing comes above the top of the zone.': 'Nada va por encima de lo alto de la zona.',
  '"top" in the last kind only': '"top" solo en el último tipo',
  'A key has a width.': 'Un dentellón tiene ancho.',
  'A key has a depth.': 'Un dentellón tiene profundidad.',
  'A stake has a length.': 'Una estaca tiene longitud.',
  'A trench has a width.': 'Una zanja tiene ancho.',
  'A trench has a depth.': 'Una zanja tiene profundidad.',
  'A trench has a depth below the bed.': 'Una zanja tiene profundidad bajo el lecho.',
  'The overlap leaves nothing of the roll.': 'El traslape no deja nada del rollo.',
  'less than the roll': 'menos que el rollo',
  'No type of blanket is called so.': 'Ningún tipo de manta se llama así.',
  'No lining is called so.': 'Ningún revestimiento se llama así.',
  'A launchable toe stores rock: its cross-section, volume for each unit of length.':
    'Un pie que se asienta acumula roca: su sección, volumen por unidad de longitud.',
  'The thicker part has a width.': 'La parte más gruesa tiene ancho.',
  'The thicker part has a thickness.': 'La parte más gruesa tiene espesor.',
  'No method of this name estimates scour at a toe.':
    'Ningún método de este nombre estima la socavación en un pie.',
  'This method is named twice.': 'Este método se nombra dos veces.',
  'each method once': 'cada método una vez',
  'This factor is outside what has a meaning.': 'Este factor está fuera de lo que tiene sentido.',
  'A bend radius is more than zero.': 'El radio de una curva es más que cero.',
  'The stretch does not run downstream from the first point.':
    'El trecho no corre aguas abajo desde el primer punto.',
  'A freeboard names its rule.': 'Un borde libre nombra su regla.',
  'A weight is a number above zero.': 'Un peso es un número mayor que cero.',
  'This is not a way to govern the size.': 'Esto no es un modo de definir el tamaño.',
  'the id of a sizing method': 'el id de un método de tamaño',
  'the id of a method': 'el id de un método',

  // Water and reaches.
  'The next section lies further downstream.': 'La sección siguiente está más aguas abajo.',
  'A loss is a share of the change of the velocity head.':
    'Una pérdida es una parte del cambio de la carga de velocidad.',
  'Without a fall there is no uniform flow: the slope is more than zero.':
    'Sin desnivel no hay flujo uniforme: la pendiente es más que cero.',
  'Rapid flow is computed downstream from the upper end.':
    'El flujo rápido se calcula hacia aguas abajo desde el extremo superior.',
  'what is known of the water at the upper end': 'lo que se sabe del agua en el extremo superior',
  'A reach runs from one section to another.': 'Un tramo va de una sección a otra.',
  'at least 2 sections, from upstream to downstream':
    'al menos 2 secciones, de aguas arriba a aguas abajo',
  'The section "{section_}" already stands in reach "{reach_}".':
    'La sección «{section}» ya está en el tramo «{reach}».',
  'each section once, in one reach': 'cada sección una vez, en un solo tramo',
  'The bank stations do not lie inside the section, left before right.':
    'Las progresivas de las márgenes no están dentro de la sección, la izquierda antes que la derecha.',
  'stations of the survey': 'progresivas del levantamiento',
  '0 to 366': 'de 0 a 366',

  // Rock, sources, prices, risks.
  'No loose rock rests at this angle.': 'Ninguna roca suelta reposa a este ángulo.',
  'A test has results.': 'Un ensayo tiene resultados.',
  'This is not a date.': 'Esto no es una fecha.',
  'A sentence belongs here.': 'Aquí va una frase.',
  'No set of requirements is called this.': 'Ningún conjunto de requisitos se llama así.',
  'This share is not believed.': 'Esta proporción no es creíble.',
  'No placed rock or gravel weighs this.': 'Ninguna roca ni grava colocada pesa esto.',
  'A truck carries more than nothing.': 'Un camión lleva más que nada.',
  'Two trucks have this name.': 'Dos camiones tienen este nombre.',
  'a name of its own': 'un nombre propio',
  'This is no price.': 'Esto no es un precio.',
  'Nothing that has a price is called "{id_}".': 'Nada que tenga precio se llama «{id}».',
  'An extent states something.': 'Una extensión indica algo.',
  "A confidence lies between a coin's throw and certainty.":
    'Una confianza está entre el azar de una moneda y la certeza.',
  "A risk lies between certainty and a coin's throw.":
    'Un riesgo está entre la certeza y el azar de una moneda.',
  'Rock is not called good by so much of its mass.':
    'No se llama buena a una roca por tanto de su masa.',
  'This number cannot stand here.': 'Este número no puede estar aquí.',
  'A quantity is written as a text with its unit.':
    'Una cantidad se escribe como texto con su unidad.',
  'A correlation lies between −1 and 1.': 'Una correlación está entre −1 y 1.',

  // Tables.
  'A quote stands inside a cell that is not quoted.':
    'Hay una comilla dentro de una celda sin comillas.',
  'A quoted cell is never closed.': 'Una celda entre comillas no se cierra.',
  'Text follows the closing quote of a cell.': 'Hay texto tras la comilla que cierra una celda.',
  'The header has {n#} columns.': 'El encabezado tiene {n} columnas.',
  'at most {n#} columns': 'a lo sumo {n} columnas',
  'Column {n#} has no heading.': 'La columna {n} no tiene encabezado.',
  'a heading above every column': 'un encabezado sobre cada columna',
  'A comment line stands below the header.': 'Hay una línea de comentario bajo el encabezado.',
  'comment lines above the header only': 'líneas de comentario solo sobre el encabezado',
  '“{text_}” is more than a number.': '«{text}» es más que un número.',
  'the number alone': 'solo el número',
  '“{text_}” is not more than zero.': '«{text}» no es más que cero.',
  'a whole number from 0 to 1,000,000': 'un número entero de 0 a 1,000,000',
  'The file is written in UTF-16 or UTF-32, not in UTF-8.':
    'El archivo está escrito en UTF-16 o UTF-32, no en UTF-8.',
  'The file holds {n#} MB, too much for a table.':
    'El archivo tiene {n} MB, demasiado para una tabla.',
  '“{text_}” names no sieve.': '«{text}» no nombra ningún tamiz.',
  '“{text_}” is more than all.': '«{text}» es más que todo.',
  'The sieves are not in order: this one turns round.':
    'Los tamices no están en orden: este va al revés.',
  'The percents retained sum to {sum#}, not to 100.':
    'Los porcentajes retenidos suman {sum}, no 100.',
  'The pan stands twice.': 'El fondo está dos veces.',
  'A gradation needs at least two sieves.': 'Una granulometría necesita al menos dos tamices.',
  '{n#} more problems of this file are left out.': 'Se omiten otros {n} problemas de este archivo.',
  'Two files called {file_} were supplied.': 'Se entregaron dos archivos llamados {file}.',
  'one file of each name': 'un archivo de cada nombre',
  'The files of this document hold too many rows together.':
    'Los archivos de este documento tienen demasiadas filas en total.',
  'at most 1,000,000 rows in all': 'a lo sumo 1,000,000 filas en total',
  'Stone {name_} stands in row {n#} already.': 'La piedra {name} ya está en la fila {n}.',
  'every stone once, under a name of its own': 'cada piedra una vez, con nombre propio',
  'The group has a mass without stones, or stones without a mass.':
    'El grupo tiene masa sin piedras, o piedras sin masa.',
  'The document holds a number that is out of range.':
    'El documento tiene un número fuera de rango.',
  'The document is nested too deeply.': 'El documento está anidado demasiado hondo.',
  'The document is larger than 64 MB.': 'El documento pasa de 64 MB.',
};
