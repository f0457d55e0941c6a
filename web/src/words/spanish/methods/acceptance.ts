/** Methods for accepting rock: charts, sampling plans, shapes, surveys. */
import type { MethodTexts } from './method_texts';

export const acceptance: MethodTexts = {
  labels: {
    'which chart': 'qué gráfico',
    'cumulative sums of both sides': 'sumas acumuladas de ambos lados',
    'the cumulative sum of one side': 'la suma acumulada de un lado',
    'exponentially weighted moving average, both sides':
      'media móvil con pesos exponenciales, ambos lados',
    'allowance of the sum, in standard deviations':
      'tolerancia de la suma, en desviaciones estándar',
    'where the sums begin, in standard deviations':
      'dónde empiezan las sumas, en desviaciones estándar',
    'weight of the latest load in the average': 'peso del último viaje en la media',
    'limits of the average, in its standard deviations':
      'límites de la media, en sus desviaciones estándar',
    'shift of the mean, in standard deviations of one load':
      'corrimiento de la media, en desviaciones estándar de un viaje',
    'loads until the alarm, on average': 'viajes hasta la alarma, en promedio',
    'one value of each load, in any one unit':
      'un valor de cada viaje, en una misma unidad cualquiera',
    'the value that loads should keep': 'el valor que deben mantener los viajes',
    'half the drift that matters': 'la mitad de la deriva que importa',
    'sum at which the alarm is raised': 'suma con que se da la alarma',
    'where both sums begin': 'dónde empiezan ambas sumas',
    'upper sum after the last load': 'suma superior tras el último viaje',
    'lower sum after the last load': 'suma inferior tras el último viaje',
    'first load with an alarm, 0 for none': 'primer viaje con alarma, 0 si ninguno',
    'mean of the moving ranges': 'media de los rangos móviles',
    'lower limit': 'límite inferior',
    'upper limit': 'límite superior',
    'thickness at each point': 'espesor en cada punto',
    'mean thickness asked for, square to the slope':
      'espesor medio que se pide, perpendicular al talud',
    'least thickness at any point': 'espesor mínimo en cualquier punto',
    'slope on which the thicknesses were measured vertically':
      'talud en que los espesores se midieron en vertical',
    'confidence of the statements': 'confianza de las afirmaciones',
    'half-width wanted of the mean, two-sided':
      'semiancho que se quiere para la media, de dos lados',
    'lower bound of the mean, one-sided': 'cota inferior de la media, de un lado',
    'share of the layer above the least thickness, estimated':
      'parte de la capa por encima del espesor mínimo, estimada',
    'points for the half-width wanted': 'puntos para el semiancho que se quiere',
    'standard deviation of one load': 'desviación estándar de un viaje',
    'weight of the latest load': 'peso del último viaje',
    'limits in standard deviations of the average': 'límites en desviaciones estándar de la media',
    'which limits': 'qué límites',
    'narrower at the first loads': 'más estrechos en los primeros viajes',
    'those of the long run throughout': 'los del largo plazo desde el principio',
    'average after the last load': 'media tras el último viaje',
    'lower limit there': 'límite inferior allí',
    'upper limit there': 'límite superior allí',
    'lower limit, in the same unit': 'límite inferior, en la misma unidad',
    'upper limit, in the same unit': 'límite superior, en la misma unidad',
    'standard deviation, n − 1': 'desviación estándar, n − 1',
    'as printed tables give it, each side rounded up':
      'como lo dan las tablas impresas, cada lado redondeado hacia arriba',
    'share on the wrong side of the limit that is still good':
      'proporción del lado malo del límite que aún es buena',
    'share that must not be accepted': 'proporción que no debe aceptarse',
    'chance that good rock is turned away': 'probabilidad de rechazar roca buena',
    'chance that bad rock is accepted': 'probabilidad de aceptar roca mala',
    'stones counted so far': 'piedras contadas hasta ahora',
    'true share on the wrong side, for the operating characteristic':
      'proporción verdadera del lado malo, para la característica de operación',
    'stone at which the count ends at the latest': 'piedra en que el conteo termina a más tardar',
    'offset of the acceptance line': 'ordenada de la línea de aceptación',
    'offset of the rejection line': 'ordenada de la línea de rechazo',
    'slope of both lines': 'pendiente de ambas líneas',
    'accept with at most so many wrong; −1 for not yet':
      'acepte con a lo sumo tantas malas; −1 si aún no',
    'turn away with so many wrong or more': 'rechace con tantas malas o más',
    'first stone after which rock can be accepted':
      'primera piedra tras la que se puede aceptar la roca',
    'stones of the single plan of the same risks': 'piedras del plan simple con los mismos riesgos',
    'chance of acceptance at p': 'probabilidad de aceptación con p',
    'stones counted on average at p': 'piedras contadas en promedio con p',
    'true share on the wrong side, for the chance of acceptance':
      'proporción verdadera del lado malo, para la probabilidad de aceptación',
    'stones of a plan to look at': 'piedras de un plan por examinar',
    'most on the wrong side of a plan to look at': 'las más del lado malo, en un plan por examinar',
    'stones to count': 'piedras por contar',
    'accept with at most so many on the wrong side': 'acepte con a lo sumo tantas del lado malo',
    'chance of acceptance at p1': 'probabilidad de aceptación con p1',
    'longest axis': 'eje más largo',
    'middle axis': 'eje intermedio',
    'shortest axis': 'eje más corto',
    'middle over longest axis': 'eje intermedio sobre el más largo',
    'shortest over middle axis': 'eje más corto sobre el intermedio',
    'longest over shortest axis': 'eje más largo sobre el más corto',
    'square opening that lets it through': 'abertura cuadrada que la deja pasar',
    'mass as an ellipsoid': 'masa como elipsoide',
    'mass as a sphere of the middle axis': 'masa como esfera del eje intermedio',
    'mass by 0.85·ρ·b³': 'masa según 0.85·ρ·b³',
    'sphere of the volume of the ellipsoid': 'esfera del volumen del elipsoide',
    'percent smaller that is looked for': 'porcentaje que pasa que se busca',
    'half-width wanted, in percent smaller': 'semiancho que se quiere, en porcentaje que pasa',
    'two-sided confidence': 'confianza de dos lados',
    'stones picked from each load': 'piedras tomadas de cada viaje',
    'how alike stones of one load are; 0 for not at all':
      'cuánto se parecen las piedras de un viaje; 0 para nada',
    'stones, if each told something new': 'piedras, si cada una dijera algo nuevo',
    'loads to take them from': 'viajes de los que tomarlas',
    'sizes of the stones of the first, in any one unit':
      'tamaños de las piedras del primero, en una misma unidad cualquiera',
    'sizes of the stones of the second': 'tamaños de las piedras del segundo',
    'Anderson–Darling statistic': 'estadístico de Anderson–Darling',
    'the same, standardised': 'lo mismo, estandarizado',
    'stones in each class, from small to large': 'piedras en cada clase, de menor a mayor',
    'confidence of all limits together': 'confianza de todos los límites juntos',
    'class whose limits are given, 1 the first': 'clase cuyos límites se dan, 1 la primera',
    'lower limit of the share of the class': 'límite inferior de la proporción de la clase',
    'upper limit of the share of the class': 'límite superior de la proporción de la clase',
    'half-width of the strip that holds the whole curve':
      'semiancho de la franja que contiene toda la curva',
  },
  cautions: {
    'Holds for loads that vary independently and near to normally.':
      'Vale para viajes que varían de modo independiente y casi normal.',
    'Holds for stones picked independently; the first stones must not be the ones nearest to hand.':
      'Vale para piedras tomadas de modo independiente; las primeras no deben ser las que están más a mano.',
    'Ends at three times the single plan at the latest, with the nearer line (NIST §6.2.6).':
      'Termina a más tardar con tres veces el plan simple, con la línea más cercana (NIST §6.2.6).',
    'A band has several limits; each has its own plan, and the risks add up.':
      'Una banda tiene varios límites; cada uno tiene su plan, y los riesgos se suman.',
    'The same size means 62 % more mass by 0.85·ρ·b³ than as a sphere: ask which a class uses.':
      'El mismo tamaño es 62 % más masa según 0.85·ρ·b³ que como esfera: pregunte cuál usa una clase.',
    'USACE Streambank Manual, Appendix A: no stone with a/c above 3.5.':
      'USACE Streambank Manual, Appendix A: ninguna piedra con a/c mayor que 3.5.',
    'A normal approximation for planning; what was counted is judged by exact limits.':
      'Aproximación normal para planificar; lo contado se evalúa con límites exactos.',
    'Stones of one load are alike: more loads help more than more stones of one.':
      'Las piedras de un viaje se parecen: más viajes ayudan más que más piedras de uno.',
    'The chance of the rank statistic is read between printed points of 25 % and 0.1 %; beyond them it is that point.':
      'La probabilidad del estadístico de rangos se lee entre puntos impresos de 25 % y 0.1 %; más allá es la de ese punto.',
    'Rounded sizes are ties and are counted as such.':
      'Los tamaños redondeados son empates y se cuentan como tales.',
    'Holds for stones picked independently on a grid.':
      'Vale para piedras tomadas de modo independiente en una cuadrícula.',
  },
};
