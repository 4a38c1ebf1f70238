import type { GradePart } from '../../carbide/index.ts';
import type { GradeLimits } from './grade-limits.ts';

/** What the plant makes, of what, and coated with what. Every change is a whole new text; lots keep what they were opened with. */
export interface ProductCard { readonly id: string; readonly designation: string; readonly name: string; readonly itemCode: string; readonly grade: string; readonly layer: string | null; readonly marking: string; readonly piecesPerBox: number; readonly plan: string; /** Sintered volume, mm³. */ readonly sinteredVolumeMm3: number; readonly thicknessMm: number; /** Of the sintered piece, before grinding. */ readonly thicknessLimits?: { readonly lowerMm: number; readonly upperMm: number }; /** Sintered, before grinding. */ readonly inscribedCircleMm?: number; /** Made to a drawing: its designation need not be one of ISO 1832. Absent on cards from before designations were read, and where the designation says it all. */ readonly byDrawing?: boolean }
export interface GradeCard { readonly id: string; readonly name: string; readonly composition: readonly GradePart[]; readonly powderPlan: string; /** Plan of a batch blended of others; the powder plan where there is none. */ readonly blendPlan?: string; readonly furnacePlan: string; /** Absent where the plant has set none. */ readonly limits?: GradeLimits }
export interface LayerCard { readonly id: string; readonly name: string; readonly coatingPlan: string; /** From the surface to the substrate; absent where the coating is judged as a whole. */ readonly layers?: readonly CoatingLayer[] }
/** One layer of a coating and the limits of its thickness, µm; null where there is none. */
export interface CoatingLayer { readonly name: string; readonly lowerUm: number | null; readonly upperUm: number | null }
export type CatalogueSlip =
  | { readonly type: 'productDefined'; readonly product: ProductCard }
  | { readonly type: 'gradeDefined'; readonly grade: GradeCard }
  | { readonly type: 'layerDefined'; readonly layer: LayerCard };
export type CatalogueCommand =
  | { readonly type: 'defineProduct'; readonly product: ProductCard }
  | { readonly type: 'defineGrade'; readonly grade: GradeCard }
  | { readonly type: 'defineLayer'; readonly layer: LayerCard };
