/** Limits within which methods were published. */
export const methodLimit: Record<string, string> = {
  'Bank from 1V:1.5H to 1V:3H, or a bed, in the far-western form':
    'Margen de 1V:1.5H a 1V:3H, o un lecho, en la forma del lejano oeste',
  'Bank not steeper than {slope#}': 'Margen no más empinada que {slope}',
  'Bank of plain rock not steeper than {slope#}; steeper only as an exception':
    'Margen de roca simple no más empinada que {slope}; más empinada solo como excepción',
  'Bend radius at least twice the top width':
    'Radio de la curva de al menos el doble del ancho superior',
  'Bend with R/W of at least {ratio#} in the far-western form':
    'Curva con R/W de al menos {ratio} en la forma del lejano oeste',
  'Channel slope below {slope#}': 'Pendiente del cauce menor que {slope}',
  'Culvert up to {size#}': 'Alcantarilla de hasta {size}',
  'D85/D15 of the rock from {from#} to {to#}, as tested':
    'D85/D15 de la roca de {from} a {to}, como se ensayó',
  'Damage Nod from {from#} to {to#}': 'Daño Nod de {from} a {to}',
  "Depth over the toe {from#} to {to#} of the water's":
    'Tirante sobre el pie de {from} a {to} del tirante total',
  'Depth over the toe {from#} to {to#} stones': 'Tirante sobre el pie de {from} a {to} piedras',
  'Design wave at most {height#} for graded riprap':
    'Ola de diseño de a lo sumo {height} para enrocado graduado',
  'Face not steeper than {slope#}': 'Cara no más empinada que {slope}',
  'Froude number below {n#}': 'Número de Froude menor que {n}',
  'Tranquil flow (Froude number below {n#})': 'Flujo tranquilo (número de Froude menor que {n})',
  'Location factor from {from#} to {to#}': 'Factor de ubicación de {from} a {to}',
  'One to two channel widths between keys': 'De uno a dos anchos del cauce entre dentellones',
  'Rock from 15 to 550 mm (0.6 to 22 in)': 'Roca de 15 a 550 mm (de 0.6 a 22 in)',
  'Safety factor above {n#}': 'Factor de seguridad mayor que {n}',
  'Safety factor at least {n#}': 'Factor de seguridad de al menos {n}',
  'Slope between {from#} and {to#}, as tested': 'Talud entre {from} y {to}, como se ensayó',
  'Slope of {slope#} or flatter': 'Talud de {slope} o más tendido',
  'Specific gravity at least {n#}': 'Densidad relativa de al menos {n}',
  'Stability factor from {from#} to {to#}, the range of Table {n#}':
    'Factor de estabilidad de {from} a {to}, el rango de la Tabla {n}',
  "Straight reach in Lane's form": 'Tramo recto en la forma de Lane',
  'Turbulence factor up to {n#}; more is a special case':
    'Factor de turbulencia de hasta {n}; más es un caso especial',
  'Turbulence intensity at least {n#}, under gabions {m#}':
    'Intensidad de turbulencia de al menos {n}, bajo gaviones {m}',
  'Type parameter at most {n#}; above it the manual asks for other measures':
    'Parámetro de tipo de a lo sumo {n}; por encima el manual pide otras medidas',
  'Velocity near the bed given, or turbulence intensity from {from#} to {to#}':
    'Velocidad junto al lecho dada, o intensidad de turbulencia de {from} a {to}',
  'Water deeper than the stone is wide': 'Tirante mayor que el ancho de la piedra',
  "Wave height {from#} to {to#} of the water's depth":
    'Altura de ola de {from} a {to} de la profundidad del agua',
  'Every size above the one found is enough too; on a steep side the steep form can refuse larger rock again, because it asks more safety of it':
    'Todo tamaño mayor que el hallado también basta; en un talud empinado la forma para fuerte pendiente puede volver a rechazar roca mayor, porque le pide más seguridad',
};
