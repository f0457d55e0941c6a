/** What is wrong with an entry of the record, and with the files that it names. */
export const entries: Record<string, string> = {
  // What is taken down in the field.
  'A stone has a size.': 'Una piedra tiene un tamaño.',
  'A stone has a mass.': 'Una piedra tiene una masa.',
  'A stone has a length.': 'Una piedra tiene un largo.',
  'A stone has a breadth.': 'Una piedra tiene un ancho.',
  'A stone has a thickness.': 'Una piedra tiene un espesor.',
  'Stones have a size.': 'Las piedras tienen un tamaño.',
  'No stone of the trade is that large; the unit may be wrong.':
    'Ninguna piedra del oficio es tan grande; puede estar mal la unidad.',
  'up to 5 m (16 ft)': 'hasta 5 m (16 ft)',
  'The smallest stone is larger than the largest.':
    'La piedra más chica es mayor que la más grande.',
  'not more than the largest': 'no más que la más grande',
  'The most common stone is not between the two ends.':
    'La piedra más frecuente no está entre los dos extremos.',
  'between smallest and largest': 'entre la más chica y la más grande',
  'The range does not go from small to large.': 'El intervalo no va de chico a grande.',
  '0 or more, and less than not_larger_than': '0 o más, y menos que not_larger_than',
  'The axes do not go from the longest to the shortest.':
    'Los ejes no van del más largo al más corto.',
  'longest, intermediate, shortest': 'el más largo, el intermedio, el más corto',
  'A count has measured axes or bins, one of the two.':
    'Un conteo tiene ejes medidos o tamaños, una de las dos cosas.',
  'No stone was measured.': 'No se midió ninguna piedra.',
  'at least one stone': 'al menos una piedra',
  '{look_} stands twice: the same kind of look at the same lot by the same person at the same time.':
    '{look} está dos veces: el mismo tipo de observación del mismo lote, por la misma persona y a la misma hora.',
  'each look once': 'cada observación una vez',
  'What was measured is more than nothing.': 'Lo que se midió es más que nada.',
  'A lot is more than nothing.': 'Un lote es más que nada.',
  'No layer has this thickness.': 'Ninguna capa tiene este espesor.',
  'A layer has a thickness.': 'Una capa tiene un espesor.',
  'A slope on which heights were taken rises.':
    'Un talud en el que se tomaron alturas tiene pendiente.',
  'such as 1V:2H': 'por ejemplo 1V:2H',
  'Nothing on a lining is that long; the unit may be wrong.':
    'Nada en un revestimiento es tan largo; puede estar mal la unidad.',
  'Nothing is said of this check.': 'No se dice nada de esta verificación.',
  'a result, lengths measured, or loads counted':
    'un resultado, longitudes medidas o viajes contados',
  'What was found stands under the ids of checks.':
    'Lo hallado va bajo los ids de las verificaciones.',
  'It is about a zone or about a lot, one of the two.':
    'Trata de una zona o de un lote, uno de los dos.',
  'a zone, or a lot': 'una zona, o un lote',
  'A check is a check of a zone.': 'Una verificación es de una zona.',
  'the id of its zone': 'el id de su zona',
  "Work is used as it is without the engineer's name.":
    'Se usa un trabajo tal como está sin el nombre del ingeniero.',
  'the name of the licensed engineer who approves':
    'el nombre del ingeniero habilitado que aprueba',
  'It is closed, but nobody said what is done about it.':
    'Está cerrada, pero nadie dijo qué se hace.',
  'It is disposed of before it is opened; it stands before that; a clock is wrong or two are mixed up.':
    'Se decidió antes de abrirla; un reloj está mal o se confundieron dos.',
  'No rock has this specific gravity.': 'Ninguna roca tiene esta densidad relativa.',
  'The specific gravity of the rock is missing.': 'Falta la densidad relativa de la roca.',
  '{from#} to {to#} (protection rock lies between about {low#} and {high#})':
    'de {from} a {to} (la roca de protección está entre unos {low} y {high})',
  'specific_gravity, or specific_gravity_tests': 'specific_gravity, o specific_gravity_tests',
  'A photo is named by the SHA-256 of its file.':
    'Una foto se nombra con el SHA-256 de su archivo.',
  'This photo is named twice.': 'Esta foto se nombra dos veces.',
  'each photo once': 'cada foto una vez',
  'Decimal degrees belong here.': 'Aquí van grados decimales.',
  'No place on earth is there.': 'No hay lugar en la Tierra ahí.',
  '-180° to 180°, east positive': 'de -180° a 180°, positivo al este',
  '-90° to 90°, north positive': 'de -90° a 90°, positivo al norte',
  'A discharge is more than zero.': 'Un caudal es más que cero.',
  'A year has not so many days.': 'Un año no tiene tantos días.',
  'Water runs downhill: the slope is more than zero.':
    'El agua corre cuesta abajo: la pendiente es más que cero.',

  // Ranges and groups.
  'There is no bin.': 'No hay ningún intervalo.',
  'There is no group.': 'No hay ningún grupo.',
  'No bin holds a stone.': 'Ningún intervalo tiene piedras.',
  'The size is not above 0.': 'El tamaño no es mayor que 0.',
  'a size above 0': 'un tamaño mayor que 0',
  'The mass is not a number.': 'La masa no es un número.',
  'No group has any mass.': 'Ningún grupo tiene masa.',
  'at least one mass above 0': 'al menos una masa mayor que 0',
  'It has {n#} stones.': 'Tiene {n} piedras.',
  '0 or more stones': '0 o más piedras',
  'the mass of the stones': 'la masa de las piedras',

  // Files.
  'The file “{file}” was not supplied.': 'No se entregó el archivo «{file}».',
  'The file {file} was not read into the document.':
    'El archivo {file} no se leyó en el documento.',
  'the file beside the document, under the same name':
    'el archivo junto al documento, con el mismo nombre',
  'supply the file beside the document': 'entregue el archivo junto al documento',
  'The file is empty.': 'El archivo está vacío.',
  'a header row and rows below it': 'una fila de encabezado y filas debajo',
  'The file has no header row.': 'El archivo no tiene fila de encabezado.',
  'The table has a header and no rows.': 'La tabla tiene encabezado y ninguna fila.',
  'at least one row below the header': 'al menos una fila bajo el encabezado',
  'The table is too long.': 'La tabla es demasiado larga.',
  'The file is a spreadsheet or another packed file, not a CSV file.':
    'El archivo es una hoja de cálculo u otro archivo comprimido, no un CSV.',
  'a text file saved as CSV in UTF-8': 'un archivo de texto guardado como CSV en UTF-8',
  'The file is not written in UTF-8.': 'El archivo no está escrito en UTF-8.',
  'The file is not text: it holds zero bytes.': 'El archivo no es texto: contiene bytes nulos.',
  'The file holds a control character.': 'El archivo contiene un carácter de control.',
  'The header is one cell: no comma, semicolon or tab separates its columns.':
    'El encabezado es una sola celda: ni coma, ni punto y coma, ni tabulador separan sus columnas.',
  'The column {column_} is missing.': 'Falta la columna {column}.',
  'No column is called {column_}.': 'Ninguna columna se llama {column}.',
  'Two columns are called {column_}.': 'Dos columnas se llaman {column}.',
  'every column once': 'cada columna una vez',
  'This column takes no unit.': 'Esta columna no lleva unidad.',
  'The heading does not state a unit.': 'El encabezado no indica la unidad.',
  '{text_} is not a unit for this column.': '{text} no es una unidad para esta columna.',
  '“{text_}” is not a number.': '«{text}» no es un número.',
  'one decimal number, such as 12.5': 'un número decimal, como 12.5',
  'The cell is empty.': 'La celda está vacía.',
  '“{text_}” is written with a comma.': '«{text}» está escrito con coma.',
  'write 12.5, not 12,5; 1200, not 1,200': 'escriba 12.5, no 12,5; 1200, no 1,200',
  'write 12.5, not 12,5': 'escriba 12.5, no 12,5',
  'The row has {n#} cells, the header has {m#}; a number is written with a decimal comma.':
    'La fila tiene {n} celdas y el encabezado {m}; un número está escrito con coma decimal.',
  'The row has {n#} cells, the header has {m#}.': 'La fila tiene {n} celdas y el encabezado {m}.',
  'The row has {n#} cell, the header has {m#}.': 'La fila tiene {n} celda y el encabezado {m}.',
  '“{text_}” is less than zero.': '«{text}» es menos que cero.',
  'a value from 0 up': 'un valor de 0 en adelante',
  '“{text_}” is not more than zero.': '«{text}» no es más que cero.',
  'a value above 0': 'un valor mayor que 0',
  '“{text_}” is not a count.': '«{text}» no es un conteo.',
  'The axes of this stone are not in order.': 'Los ejes de esta piedra no están en orden.',
  'This sieve stands twice.': 'Este tamiz está dos veces.',
  'each sieve once': 'cada tamiz una vez',
  'two or more sieves': 'dos o más tamices',

  // Documents.
  'This is not a site document.': 'Esto no es un documento de obra.',
  'The document is empty.': 'El documento está vacío.',
  'a site document in JSON': 'un documento de obra en JSON',
  'The document is not valid JSON: it breaks off or holds a wrong sign here.':
    'El documento no es JSON válido: aquí se corta o tiene un signo equivocado.',
  'JSON text in UTF-8 (RFC 8259)': 'texto JSON en UTF-8 (RFC 8259)',
  'The document holds binary data, not JSON text.':
    'El documento contiene datos binarios, no texto JSON.',
  'JSON text in UTF-8': 'texto JSON en UTF-8',
  'This version of the format is not known.': 'Esta versión del formato no se conoce.',
  'The document has no revision.': 'El documento no tiene ninguna revisión.',
  'at least one revision': 'al menos una revisión',

  // Photos.
  'Nothing on the photo tells its scale.': 'Nada en la foto indica su escala.',
  'balls of known diameter, a staff with two marks, or a marker board':
    'bolas de diámetro conocido, una mira con dos marcas, o un tablero de marcas',
  'An oblique view with its scale at one height only is wrong by up to {share#}.':
    'Una vista oblicua con su escala a una sola altura yerra hasta un {share}.',
  'two balls, staffs or boards at least {n#} pixels apart in height':
    'dos bolas, miras o tableros separados al menos {n} píxeles en altura',
  'The largest stone by tape, {size#}, is smaller than the D85 of the photos.':
    'La piedra más grande según la cinta, {size}, es menor que el D85 de las fotos.',
  'the largest stone in sight; else the scale of the photos is off':
    'la piedra más grande a la vista; si no, está mal la escala de las fotos',
  'The sizes are more alike than those of any pile that the factors were found on.':
    'Los tamaños son más parecidos entre sí que los de cualquier acopio en que se hallaron los factores.',
  'outlines of rock as it lies, or a count of stones':
    'contornos de la roca tal como está, o un conteo de piedras',
  '{n#} nodes of the check tell something.': '{n} puntos de la verificación dicen algo.',
  '{n#} or more, on rock': '{n} o más, sobre roca',
  'The photo is too dark to tell one stone from the next.':
    'La foto es demasiado oscura para distinguir las piedras.',
  'a photo by daylight': 'una foto con luz de día',
  'The photo shows next to nothing: it is of one tone all over.':
    'La foto no muestra casi nada: es de un solo tono.',
  'a photo of rock, in focus': 'una foto de roca, enfocada',
  'No rock was found on it, or too little: {share#} of the picture.':
    'No se halló roca en ella, o muy poca: {share} de la imagen.',
  'rock on {share#} of it or more, stones whole in the frame':
    'roca en el {share} o más, piedras enteras en el cuadro',
  'Only {n#} stones were found on it.': 'Solo se hallaron {n} piedras en ella.',
  '{n#} or more, from farther away': '{n} o más, de más lejos',
  'One piece is a stone already.': 'Un solo pedazo ya es una piedra.',
  'two or more': 'dos o más',
  'These pieces do not touch, so no one outline goes round them.':
    'Estos pedazos no se tocan, así que ningún contorno los rodea.',
  'pieces side by side': 'pedazos uno al lado del otro',
  'This is no line.': 'Esto no es una línea.',
  'two places apart': 'dos lugares separados',
  'The line does not go through the stone.': 'La línea no atraviesa la piedra.',
  'a line from one side of the stone to the other': 'una línea de un lado al otro de la piedra',
  'Nothing that is not a stone already was drawn round.':
    'No se rodeó nada que no sea ya una piedra.',
  'a line once round a stone that has no outline yet':
    'una línea alrededor de una piedra que aún no tiene contorno',
};
