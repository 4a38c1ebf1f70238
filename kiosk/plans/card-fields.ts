import { formatDesignation, insertDimensions, readDesignation } from '../../shared/carbide/index.ts';
import type { CoatingLayer, LayerCard, ProductCard, SubjectKind } from '../../shared/traveller/index.ts';
import type { RecordCommand } from '../../shared/wire/records-file.ts';
import { problemPlace, problemText } from '../../shared/words/designation.en.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { readNumber, typedFigure } from '../desk/show.ts';
import type { CardKind, CatalogueView } from './catalogue-view.ts';
import { pageFormat } from './rule-text.ts';

const words = plansDeskWords.catalogue;
/** Stands for no coating among the choices. No coating is numbered so: numbers hold capitals. */
export const UNCOATED = 'uncoated';
/** Whether a product's designation says what it is, or a drawing does. */
export const BY_DESIGNATION = 'designation';
export const BY_DRAWING = 'drawing';

/** One field of a card: typed, or chosen from plans of a kind, grades or coatings. */
export interface CardField { readonly name: string; readonly label: string; readonly hint: string; readonly kind: 'text' | 'positive' | 'whole' | 'designation' | 'layers' | 'grade' | 'layer' | 'madeTo' | { readonly planFor: SubjectKind }; readonly unit: string; readonly most: number; /** May stay empty: the card then states nothing of it. */ readonly optional: boolean }
type Texts = Readonly<Record<string, string>>;

const field = (name: string, label: string, kind: CardField['kind'] = 'text', { hint = '', unit = '', most = 60, optional = false } = {}): CardField => ({ name, label, kind, hint, unit, most, optional });
const number = field('id', words.fields.id, 'text', { hint: words.fields.idHint, most: 16 });
/** The fields of each card, in the order in which they are asked. Lengths are those of the door. */
export const CARD_FIELDS: Readonly<Record<CardKind, readonly CardField[]>> = {
  layer: [number, field('name', words.layer.name), field('layers', words.fields.layers, 'layers', { hint: words.fields.layersHint, most: 1000 }), field('coatingPlan', words.layer.coatingPlan, { planFor: 'coating' })],
  product: [
    number, field('designation', words.product.designation, 'designation'), field('name', words.product.name, 'text', { most: 80 }), field('itemCode', words.product.itemCode, 'text', { hint: words.fields.codeHint, most: 16 }),
    field('marking', words.product.marking, 'text', { hint: words.fields.markingHint, most: 100 }), field('piecesPerBox', words.product.piecesPerBox, 'whole'),
    field('sinteredVolumeMm3', words.fields.sinteredVolumeMm3, 'positive', { unit: 'mm³' }), field('thicknessMm', words.fields.thicknessMm, 'positive', { unit: 'mm' }),
    field('thicknessLowerMm', words.fields.thicknessLowerMm, 'positive', { unit: 'mm', hint: words.fields.sinteredHint, optional: true }), field('thicknessUpperMm', words.fields.thicknessUpperMm, 'positive', { unit: 'mm', optional: true }),
    field('inscribedCircleMm', words.fields.inscribedCircleMm, 'positive', { unit: 'mm', hint: words.fields.sinteredHint, optional: true }),
    field('madeTo', words.fields.madeTo, 'madeTo'), field('grade', words.product.grade, 'grade'), field('layer', words.product.layer, 'layer'), field('plan', words.product.plan, { planFor: 'lot' }),
  ],
};

/** The texts of a card that is there; null where none of this number is. */
export function textsOf(kind: CardKind, id: string, { layers, products }: Pick<CatalogueView, 'layers' | 'products'>): Texts | null {
  const card = { layer: layers, product: products }[kind].find((each) => each.id === id);
  if (card === undefined) return null;
  const texts = new Map(Object.entries<unknown>({ ...card }).map(([name, value]) => [name, typeof value === 'number' ? typedFigure(value) : String(value ?? UNCOATED)]));
  if ('designation' in card) texts.set('madeTo', card.byDrawing === true ? BY_DRAWING : BY_DESIGNATION);
  if (kind === 'layer') texts.set('layers', 'layers' in card && card.layers !== undefined ? card.layers.map(({ name, lowerUm, upperUm }) => [name, ...[lowerUm, upperUm].map((limit) => (limit === null ? NO_LIMIT : typedFigure(limit)))].join(' ')).join('\n') : '');
  if ('thicknessLimits' in card && card.thicknessLimits !== undefined) texts.set('thicknessLowerMm', typedFigure(card.thicknessLimits.lowerMm)).set('thicknessUpperMm', typedFigure(card.thicknessLimits.upperMm));
  return Object.fromEntries(texts);
}

const LIMITS = ['thicknessLowerMm', 'thicknessUpperMm'];
/** What is wrong with a field's text; empty where nothing is. @param texts of the other fields */
export function cardFault({ kind, name, optional }: CardField, text: string, texts: Texts = {}): string {
  // One limit without the other says nothing that could be carried to the press.
  if (optional && text.trim() === '') return name.startsWith('thickness') && LIMITS.some((limit) => (texts[limit] ?? '').trim() !== '') ? words.wrong.missing : '';
  if (kind === 'madeTo') return '';
  if (kind === 'layers') return readLayers(text) === null ? words.wrong.layers : '';
  if (text.trim() === '') return words.wrong.missing;
  if (kind === 'designation') return texts['madeTo'] === BY_DRAWING ? '' : designationFault(text);
  const value = readNumber(text);
  if (kind === 'positive') return value !== null && value > 0 ? '' : words.wrong.number;
  if (kind === 'whole') return value !== null && Number.isInteger(value) && value >= 1 ? '' : words.wrong.whole;
  return '';
}

function designationFault(text: string): string {
  const read = readDesignation(text);
  return read.ok ? '' : read.problems.map((problem) => `${problemPlace(problem)}: ${problemText(problem, pageFormat())}`).join(' ');
}

/** What a card says that is begun from a designation: the thickness stands in it. */
export function textsFromDesignation(text: string): Texts {
  const read = readDesignation(text);
  return read.ok ? { designation: formatDesignation(read.designation), thicknessMm: typedFigure(insertDimensions(read.designation).thickness.nominalMm) } : { designation: text };
}

/** The command that defines the card. The texts are sound. */
export function cardCommand(kind: CardKind, texts: Texts): RecordCommand {
  const text = (name: string): string => (texts[name] ?? '').trim();
  const figure = (name: string): number => readNumber(text(name)) ?? 0;
  const [id, name] = [text('id'), text('name')];
  switch (kind) {
    case 'layer': {
      const layers = readLayers(text('layers')) ?? [];
      return { type: 'defineLayer', layer: { id, name, coatingPlan: text('coatingPlan'), ...(layers.length === 0 ? {} : { layers }) } satisfies LayerCard };
    }
    case 'product': {
      const [lowerMm, upperMm, circle] = [text('thicknessLowerMm'), text('thicknessUpperMm'), text('inscribedCircleMm')];
      const product: ProductCard = {
        id, name, designation: text('designation'), itemCode: text('itemCode'), grade: text('grade'), layer: text('layer') === UNCOATED ? null : text('layer'), marking: text('marking'),
        piecesPerBox: figure('piecesPerBox'), plan: text('plan'), sinteredVolumeMm3: figure('sinteredVolumeMm3'), thicknessMm: figure('thicknessMm'),
        ...(lowerMm === '' || upperMm === '' ? {} : { thicknessLimits: { lowerMm: figure('thicknessLowerMm'), upperMm: figure('thicknessUpperMm') } }), ...(circle === '' ? {} : { inscribedCircleMm: figure('inscribedCircleMm') }),
        ...(text('madeTo') === BY_DRAWING ? { byDrawing: true } : {}),
      };
      return { type: 'defineProduct', product };
    }
  }
}

/** Stands for a limit that is not there. */
const NO_LIMIT = '-';

/** Layers one a line from the surface, each with its least and most thickness in µm: "TiN 0.5 1.5". Empty text: none are named. Null where a line is something else. */
export function readLayers(text: string): readonly CoatingLayer[] | null {
  const lines = text.split('\n').map((line) => line.replace(/\s*µm\s*$/, '').trim()).filter((line) => line !== '');
  const layers = lines.flatMap((line): CoatingLayer[] => {
    const [, name = '', least = '', most = ''] = /^(.*\S)\s+(\S+)\s+(\S+)$/.exec(line) ?? [];
    const [lowerUm, upperUm] = [least, most].map((limit) => (limit === NO_LIMIT ? null : readNumber(limit)));
    const sound = name !== '' && [[least, lowerUm], [most, upperUm]].every(([typed, limit]) => typed === NO_LIMIT || (typeof limit === 'number' && limit > 0));
    return sound && lowerUm !== undefined && upperUm !== undefined ? [{ name, lowerUm, upperUm }] : [];
  });
  return layers.length < lines.length ? null : layers;
}
