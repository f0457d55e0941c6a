/** Where a figure of a calculation comes from; documents are called as they call themselves. */
export const origins: Record<string, string> = {
  document: 'documento',
  catalog: 'catálogo',
  measured: 'medido',
  design: 'diseño',
  check: 'verificación',
  certificate: 'certificado',
  'one minus the confidence': 'uno menos la confianza',
  'our default; the standards state none':
    'nuestro valor por omisión; las normas no indican ninguno',
  'stated for the zone': 'indicado para la zona',
  'none stated': 'ninguno indicado',
  'walks and surveys': 'recorridos y levantamientos',
  'straight reach': 'tramo recto',
  'section {id_}': 'sección {id}',
  'centreline {name_}': 'eje del cauce {name}',
  'submittal of {when@}': 'presentación del {when}',
  'bracketed root finding': 'búsqueda de raíz acotada',
  'standard step method': 'método del paso estándar',
  'standard step method, bracketed root finding':
    'método del paso estándar, búsqueda de raíz acotada',
  'energy balanced from section to section': 'energía equilibrada de sección a sección',
  'computed upstream from the downstream boundary':
    'calculado hacia aguas arriba desde el borde de aguas abajo',
  "Manning's equation, k = 1 in SI": 'ecuación de Manning, k = 1 en SI',
  'taken as the depth of the contracted section': 'tomado como el tirante de la sección contraída',
  'spread over pictures put together anew from their blocks':
    'dispersión entre fotos rearmadas con sus bloques',
  'common practice; no published figure is held here':
    'práctica común; aquí no hay cifra publicada',
  'the method that leaves least margin governs': 'rige el método que deja menos holgura',
  "Proofstone's own study of photographs, measured on rendered piles of known rock, {part_} (computed)":
    'Estudio propio de Proofstone con fotografías, medidas en acopios simulados de roca conocida, {part} (calculado)',
  'computed from {document_}': 'calculado con {document}',
  "Bonferroni's inequality": 'desigualdad de Bonferroni',
  '20 % up the slope on a bank, the deepest place on a bed':
    'en una margen, al 20 % talud arriba; en un lecho, el lugar más profundo',
  '{document_} eqs. {from#} to {to#}': '{document} ecs. {from} a {to}',
  '{document_}, Eq {n#}': '{document}, ec. {n}',
  '{document_}, {place!sourcePlace}': '{document}, {place}',
  '{document_}, exact confidence limits': '{document}, límites de confianza exactos',
  '{document_}, χ² test of a table of counts': '{document}, prueba χ² de una tabla de conteos',
  '{document_}, scope: percent finer by mass from size or mass ranges':
    '{document}, alcance: porcentaje que pasa en masa según rangos de tamaño o de masa',
  "{document_}, abstract: limits of the percent read on the sample's own curve":
    '{document}, resumen: límites del porcentaje leídos en la curva de la propia muestra',
  '{document_}, as Colorado mine permits reprint them; US form second-hand':
    '{document}, según la reimpresión en permisos mineros de Colorado; la forma US, de segunda mano',
  '{document_} (from memory; 1.5 widths downstream also in the {other_})':
    '{document} (de memoria; 1.5 anchos aguas abajo también en {other})',
  '{document_} (form from memory; it returns all four printed D30 of App. H)':
    '{document} (la forma, de memoria; da los cuatro D30 impresos de App. H)',
  '{document_} (from memory; confirm)': '{document} (de memoria; por confirmar)',
  '{document_} (from memory)': '{document} (de memoria)',
  '{document_} (from memory, second-hand; confirm)':
    '{document} (de memoria, de segunda mano; por confirmar)',
  '{document_} (common practice)': '{document} (práctica común)',
};
