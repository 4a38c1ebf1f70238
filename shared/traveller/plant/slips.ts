/** The plant's own facts, printed on documents. */
export interface PlantCard { readonly name: string; readonly address: string; readonly country: string; readonly demo: boolean }
export type PlantSlip = { readonly type: 'plantOpened'; readonly plant: PlantCard; readonly keeper: string } | { readonly type: 'headsSigned'; readonly digest: string; readonly streams: number; readonly position: number; readonly signature: string };
/** The first command ever: names the plant and enrols the keeper. */
export interface OpenPlant { readonly type: 'openPlant'; readonly plant: PlantCard; readonly keeper: { readonly badge: string; readonly name: string; readonly pin: string } }
export type PlantCommand = OpenPlant;
