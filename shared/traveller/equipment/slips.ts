import type { ChargeMap } from './charge-map.ts';

/** A furnace or coating plant with its map. Every change is a whole new text; charges keep the map they were opened on. */
export interface EquipmentCard extends ChargeMap { readonly id: string; readonly kind: 'furnace' | 'coating'; readonly name: string }
export interface EquipmentState { readonly kind: 'equipment'; readonly stream: string; readonly version: number; readonly card: EquipmentCard }
export type EquipmentSlip = { readonly type: 'equipmentDefined'; readonly equipment: EquipmentCard };
export interface DefineEquipment { readonly type: 'defineEquipment'; readonly equipment: EquipmentCard }
