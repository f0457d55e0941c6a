/** Methods for floods and for chances of instability. */
import type { MethodTexts } from './method_texts';

export const chances: MethodTexts = {
  labels: {
    'return period of annual greatest floods, years':
      'período de retorno de crecidas máximas anuales, años',
    'mean years between floods of that size': 'años medios entre crecidas de ese tamaño',
    'how many such floods come in a year on average':
      'cuántas crecidas así llegan en un año, en promedio',
    'return period, years': 'período de retorno, años',
    'years at risk': 'años en riesgo',
    'chance of at least one such flood in those years':
      'probabilidad de al menos una crecida así en esos años',
    'mean of the base-10 logarithms of the annual peaks':
      'media de los logaritmos decimales de los máximos anuales',
    'standard deviation of the same logarithms': 'desviación estándar de los mismos logaritmos',
    'skew of the same logarithms': 'asimetría de los mismos logaritmos',
    "the unit in which the peaks' logarithms were taken":
      'la unidad en que se tomaron los logaritmos de los máximos',
    'frequency factor': 'factor de frecuencia',
    'discharge of the return period': 'caudal del período de retorno',
    'mean D30 of the rock that is there': 'D30 medio de la roca que hay',
    'D30 by the equation at the mean values, with a safety factor of 1':
      'D30 según la ecuación con los valores medios, con factor de seguridad 1',
    'coefficient of variation of velocity': 'coeficiente de variación de la velocidad',
    'coefficient of variation of depth': 'coeficiente de variación del tirante',
    'coefficient of variation of unit weight': 'coeficiente de variación del peso unitario',
    'coefficient of variation of the available size':
      'coeficiente de variación del tamaño disponible',
    'coefficient of variation of the formula itself':
      'coeficiente de variación de la propia fórmula',
    'chance of instability in that flood': 'probabilidad de inestabilidad en esa crecida',
    'available over critical size': 'tamaño disponible sobre tamaño crítico',
    'reliability index': 'índice de confiabilidad',
    'share of the variance from velocity': 'parte de la varianza por la velocidad',
    'share from depth': 'parte por el tirante',
    'share from unit weight': 'parte por el peso unitario',
    'share from the available size': 'parte por el tamaño disponible',
    'share from the formula itself': 'parte por la propia fórmula',
    'reliability index when all are lognormal': 'índice de confiabilidad si todas son lognormales',
    'chance of instability when all are lognormal':
      'probabilidad de inestabilidad si todas son lognormales',
    'standard deviation of ln(available size / critical size)':
      'desviación estándar de ln(tamaño disponible / tamaño crítico)',
    'accepted chance of instability in that flood':
      'probabilidad de inestabilidad aceptada en esa crecida',
    'available size over the size at which rock just moves':
      'tamaño disponible sobre el tamaño con que la roca apenas se mueve',
    'mean resistance over mean load': 'resistencia media sobre solicitación media',
    'coefficient of variation of the resistance': 'coeficiente de variación de la resistencia',
    'coefficient of variation of the load': 'coeficiente de variación de la solicitación',
    'reliability index of lognormal quantities':
      'índice de confiabilidad de cantidades lognormales',
    'chance that the load exceeds the resistance':
      'probabilidad de que la solicitación supere la resistencia',
    'reliability index of normal quantities': 'índice de confiabilidad de cantidades normales',
    'the chance for normal quantities': 'la probabilidad para cantidades normales',
    'nominal size (M50/ρ)^⅓ of the armour, mean': 'tamaño nominal (M50/ρ)^⅓ de la coraza, media',
    'density of the rock over water, less 1, mean':
      'densidad de la roca sobre la del agua, menos 1, media',
    "Hudson's coefficient": 'coeficiente de Hudson',
    'horizontal over vertical of the slope, mean': 'horizontal sobre vertical del talud, media',
    'significant wave height, mean': 'altura significativa de ola, media',
    'coefficient of variation of the size': 'coeficiente de variación del tamaño',
    'coefficient of variation of Δ': 'coeficiente de variación de Δ',
    'coefficient of variation of the slope': 'coeficiente de variación del talud',
    'coefficient of variation of the wave height': 'coeficiente de variación de la altura de ola',
    'standard deviation of the formula factor A': 'desviación estándar del factor A de la fórmula',
    'wave height the armour bears at the means':
      'altura de ola que la coraza resiste con las medias',
    'margin at the means': 'holgura con las medias',
    'chance of displaced armour': 'probabilidad de coraza desplazada',
    'share of the variance from the wave height': 'parte de la varianza por la altura de ola',
    'the chance by the design point': 'la probabilidad según el punto de diseño',
  },
  cautions: {
    'A count of independent floods, not of days under water; see a duration curve for those.':
      'Un conteo de crecidas independientes, no de días bajo el agua; para esos vea una curva de duración.',
    'Regulated, urban and spring-fed basins, and records with outliers, need the full procedure of Bulletin 17C.':
      'Cuencas reguladas, urbanas o alimentadas por manantiales, y registros con valores atípicos, necesitan el procedimiento completo de Bulletin 17C.',
    'No table of coefficients of variation for rock protection is published that could be called standard: state your own and say where they come from.':
      'No hay publicada ninguna tabla de coeficientes de variación para protección con roca que pueda llamarse norma: indique los suyos y diga de dónde vienen.',
    'The chance holds for that flood only.': 'La probabilidad vale solo para esa crecida.',
    'Over the life of the works it must be combined with the chance that such a flood comes.':
      'En la vida de la obra debe combinarse con la de que llegue tal crecida.',
    'Small chances rest on the tails of the distributions, which nobody has measured: compare designs by them rather than believe the last digit.':
      'Las probabilidades pequeñas dependen de las colas de las distribuciones, que nadie ha medido: compare diseños con ellas antes que creer en la última cifra.',
    "Which chance can be accepted is the owner's and the licensed engineer's to settle, not a formula's.":
      'Qué probabilidad puede aceptarse lo deciden el dueño y el ingeniero habilitado, no una fórmula.',
    'The factor is no better than the spread it is computed from.':
      'El factor no es mejor que la dispersión de la que se calcula.',
    'Load and resistance are taken as independent.':
      'Solicitación y resistencia se toman como independientes.',
    'The chance holds for that sea state only.':
      'La probabilidad vale solo para ese estado del mar.',
    'The manual is recalled to give the formula factor a deviation of 0.18 about 1 (from memory; confirm); state it only after you have seen it.':
      'Se recuerda que el manual da al factor de la fórmula una desviación de 0.18 alrededor de 1 (de memoria; por confirmar); indíquela solo después de haberla visto.',
    'The damage the stability coefficient stands for must be the one you can bear.':
      'El daño que representa el coeficiente de estabilidad debe ser el que usted puede soportar.',
  },
};
