/** Methods for wind, waves, run-up and rock on shores. */
import type { MethodTexts } from './method_texts';

export const waves: MethodTexts = {
  labels: {
    'depth at the toe, which bounds the wave at 0.78·ds':
      'profundidad en el pie, que limita la ola a 0.78·ds',
    'fresh or sea water': 'agua dulce o de mar',
    'wave that enters the formula': 'ola que entra en la fórmula',
    'H10 = 1.27·Hs, as the manual of 1984': 'H10 = 1.27·Hs, como el manual de 1984',
    'Hs itself': 'Hs misma',
    'kind of stone and placing': 'tipo de piedra y de colocación',
    'two layers, random': 'dos capas, al azar',
    'more than three layers, random': 'más de tres capas, al azar',
    'graded angular riprap': 'enrocado angular graduado',
    'whether the wave breaks before the slope': 'rotura de la ola antes del talud',
    'the depth breaks it': 'la profundidad la rompe',
    'it reaches the slope whole': 'llega entera al talud',
    'first underlayer, lightest': 'primera subcapa, la más liviana',
    'first underlayer, heaviest': 'primera subcapa, la más pesada',
    '0.1 on an impermeable core with a thin filter, 0.4, 0.5 on a permeable core, 0.6 without a core':
      '0.1 sobre núcleo impermeable con filtro delgado, 0.4, 0.5 sobre núcleo permeable, 0.6 sin núcleo',
    'damage accepted': 'daño aceptado',
    'number of waves; counted to 7500': 'número de olas; se cuenta hasta 7500',
    'density of the rock': 'densidad de la roca',
    'density of the water': 'densidad del agua',
    'wave steepness': 'peralte de la ola',
    'surf similarity': 'parámetro de rompiente',
    'surf similarity between the two formulas': 'parámetro de rompiente entre las dos fórmulas',
    'Hs/(Δ·Dn50)': 'Hs/(Δ·Dn50)',
    'cube of the median stone on the slope': 'cubo de la piedra mediana del talud',
    'scour of the bed at the toe': 'socavación del lecho en el pie',
    'depth of the water before the structure': 'profundidad del agua ante la estructura',
    'depth of the water over the toe berm': 'profundidad del agua sobre la berma del pie',
    'of the water: 1 fresh, 1.025 sea': 'del agua: 1 dulce, 1.025 de mar',
    'damage accepted of a toe berm': 'daño aceptado de una berma de pie',
    'its mass': 'su masa',
    'width of an apron in place of a dug toe': 'ancho de un delantal en lugar de un pie excavado',
    'depth over the toe by that of the water; 0 where not given':
      'profundidad sobre el pie entre la del agua; 0 donde no se da',
    'lengths over open water, from one end of the fan to the other':
      'longitudes sobre agua abierta, de un extremo del abanico al otro',
    'angle between neighbouring radials': 'ángulo entre radiales vecinas',
    'which length stands for the fetch': 'qué longitud vale como fetch',
    'weighted by cosα, along radials': 'ponderada con cosα, a lo largo de las radiales',
    'weighted by cosα, projected on the wind': 'ponderada con cosα, proyectada sobre el viento',
    'mean of the radials': 'media de las radiales',
    'the middle radial': 'la radial central',
    'fetch by the rule chosen': 'fetch según la regla elegida',
    'effective fetch, lengths along radials':
      'fetch efectivo, longitudes a lo largo de las radiales',
    'effective fetch, lengths projected on the wind':
      'fetch efectivo, longitudes proyectadas sobre el viento',
    'middle radial': 'radial central',
    'wind speed as reported': 'velocidad del viento informada',
    'height of the anemometer': 'altura del anemómetro',
    'averaging time of the report': 'tiempo de promedio del informe',
    'averaging time that the wave growth needs':
      'tiempo de promedio que necesita la generación de olas',
    'where the wind was measured': 'dónde se midió el viento',
    'over water, or corrected already': 'sobre agua, o ya corregido',
    'on land, fetch below 10 mi: times 1.2': 'en tierra, fetch menor que 10 mi: por 1.2',
    'on land: ratio by effective fetch, 1.08 to 1.30':
      'en tierra: relación según el fetch efectivo, de 1.08 a 1.30',
    'effective fetch': 'fetch efectivo',
    'speed at 10 m, as averaged in the report': 'velocidad a 10 m, promediada como en el informe',
    'reported average over the one wanted': 'promedio informado sobre el que se quiere',
    'speed averaged over the time wanted': 'velocidad promediada en el tiempo que se quiere',
    'speed over water over speed on land': 'velocidad sobre agua sobre velocidad en tierra',
    'speed over water': 'velocidad sobre agua',
    'adjusted speed for the SPM 1984 formulas': 'velocidad ajustada para las fórmulas del SPM 1984',
    'adjusted wind speed': 'velocidad ajustada del viento',
    fetch: 'fetch',
    'mean depth over the fetch': 'profundidad media en el fetch',
    'how long the wind blows': 'cuánto sopla el viento',
    'peak period': 'período de pico',
    'wind duration at which the fetch limits the wave':
      'duración del viento con que el fetch limita la ola',
    'fetch, shortened where the wind is too short': 'fetch, acortado donde el viento dura poco',
    'wind speed over water': 'velocidad del viento sobre el agua',
    'significant period': 'período significativo',
    'wind speed over water at 10 m': 'velocidad del viento sobre el agua a 10 m',
    'straight-line fetch': 'fetch en línea recta',
    'depth of the water': 'profundidad del agua',
    'coefficient of the peak period': 'coeficiente del período de pico',
    'as one printing has it': 'como lo tiene una impresión',
    'as another printing has it': 'como lo tiene otra impresión',
    'drag coefficient': 'coeficiente de arrastre',
    'friction velocity of the wind': 'velocidad de fricción del viento',
    'height of the fully developed sea': 'altura del mar plenamente desarrollado',
    'period of the fully developed sea': 'período del mar plenamente desarrollado',
    'largest run-up above still water': 'remonte máximo sobre el agua en reposo',
    'mean period': 'período medio',
    'what lies below the rock': 'qué hay bajo la roca',
    'a dam, a dike or a soil bank': 'una presa, un dique o un terraplén de suelo',
    'rock all through: at most 1.97·Hs': 'roca en todo el cuerpo: a lo sumo 1.97·Hs',
    'run-up that 2 % of the waves pass': 'remonte que supera el 2 % de las olas',
    'wave period': 'período de ola',
    'face of the slope': 'cara del talud',
    rough: 'rugosa',
    'half as much again': 'la mitad más',
    'fetch for the setup, usually twice the effective fetch':
      'fetch para la sobreelevación, por lo común el doble del fetch efectivo',
    'mean depth along that fetch': 'profundidad media a lo largo de ese fetch',
    'freeboard above run-up and setup': 'borde libre sobre remonte y sobreelevación',
    'wave length in deep water': 'longitud de ola en aguas profundas',
    'run-up of the significant wave': 'remonte de la ola significativa',
    'wind setup': 'sobreelevación por viento',
    'crest of the protection above still water': 'cresta de la protección sobre el agua en reposo',
  },
  cautions: {
    'For deep-water waves on dam faces and reservoir shores; no sea coast.':
      'Para olas de aguas profundas en caras de presas y orillas de embalses; no para costas de mar.',
    'At dams, nothing here settles their safety.':
      'En presas, nada de lo que hay aquí resuelve su seguridad.',
    'The period is the mean one, not the peak one; the diameter is that of a cube.':
      'El período es el medio, no el de pico; el diámetro es el de un cubo.',
    'Damage S begins at 2 (slopes to 1V:3H) or 3 (flatter); the filter shows at 8 on 1V:1.5H and 1V:2H, 12 on 1V:3H, 17 on flatter slopes.':
      'El daño S empieza en 2 (taludes hasta 1V:3H) o 3 (más tendidos); el filtro queda a la vista con 8 en 1V:1.5H y 1V:2H, 12 en 1V:3H, 17 en taludes más tendidos.',
    'The coefficients scatter: 6.2 by 6.5 % and 1.0 by 8 % (one standard deviation).':
      'Los coeficientes se dispersan: 6.2 en 6.5 % y 1.0 en 8 % (una desviación estándar).',
    'Which fetch belongs to which wave formula: the effective fetch to the older reservoir procedures, the mean of nine radials to the Shore Protection Manual of 1984, the straight line to the Coastal Engineering Manual.':
      'Qué fetch va con qué fórmula de olas: el fetch efectivo con los procedimientos antiguos de embalses, la media de nueve radiales con el Shore Protection Manual de 1984, la línea recta con el Coastal Engineering Manual.',
    "Whether the length in Saville's sum is that of the radial or its projection is read both ways; the projection gives some 6 % less.":
      'Si la longitud en la suma de Saville es la de la radial o su proyección se lee de ambos modos; la proyección da un 6 % menos.',
    'The adjusted speed UA belongs to the growth formulas of the Shore Protection Manual of 1984 alone; the Coastal Engineering Manual works in friction velocity.':
      'La velocidad ajustada UA es solo de las fórmulas de generación del Shore Protection Manual de 1984; el Coastal Engineering Manual trabaja con la velocidad de fricción.',
    'Never mix them.': 'Nunca las mezcle.',
    'Corrections for air and water of different temperature and for sheltered stations are left to the designer.':
      'Las correcciones por aire y agua de distinta temperatura y por estaciones abrigadas quedan a cargo del proyectista.',
    'It takes the adjusted speed UA, not the wind speed: see wind over water.':
      'Toma la velocidad ajustada UA, no la del viento: vea viento sobre el agua.',
    'The Coastal Engineering Manual takes friction velocity; never mix them.':
      'El Coastal Engineering Manual toma la velocidad de fricción; nunca las mezcle.',
    'It takes the wind speed itself, not the adjusted speed of the manual of 1984.':
      'Toma la velocidad del viento misma, no la ajustada del manual de 1984.',
    'It supposes that the wind lasts long enough for the fetch.':
      'Supone que el viento dura lo suficiente para el fetch.',
    'The coefficient of the peak period is 0.651 in one printing and 0.751 in another, 15 % on the period; the larger one, which gives more run-up, is taken unless the other is chosen.':
      'El coeficiente del período de pico es 0.651 en una impresión y 0.751 en otra, 15 % en el período; se toma el mayor, que da más remonte, si no se elige el otro.',
    'It takes the wind speed itself; the adjusted speed UA of the Shore Protection Manual does not belong here.':
      'Toma la velocidad del viento misma; la velocidad ajustada UA del Shore Protection Manual no corresponde aquí.',
    'Wind setup and surge come on top, and freeboard on top of those.':
      'Encima van la sobreelevación por viento y la marejada, y sobre ellas el borde libre.',
    'The period is the mean one; with a peak period the result is too high.':
      'El período es el medio; con un período de pico el resultado es demasiado alto.',
    "The freeboard is the owner's: name it.": 'El borde libre lo fija el dueño: indíquelo.',
    'Tabulated freeboards of small dams already hold run-up and setup and are not added to them.':
      'Los bordes libres tabulados de presas pequeñas ya contienen remonte y sobreelevación y no se les suman.',
  },
};
