/**
 * How a figure of the tables came to be known. `seen`: read in a public text. `memory`: of the published standard, to be compared with the
 * bought one before it guards a decision. `memoryAgrees`: memory that agrees with reproductions seen. `memoryUncertain`: memory that
 * contradicts itself or an edition. `derived`: worked out here from geometry. `derivedChecked`: so, and checked against printed tables.
 * `givenByPlant`: put in by a person of the plant.
 */
export type Evidence = 'seen' | 'memory' | 'memoryAgrees' | 'memoryUncertain' | 'derived' | 'derivedChecked' | 'givenByPlant';

/**
 * Which text the tables follow. Known differences from 2004 to 2017: the hexagon of unequal sides (F) was dropped, the deviation of m for
 * shape V with d 12.7 changed, the letter of the double-chamfered edge went from Q to K.
 * @see foreword of GB/T 2076-2021, identical with ISO 1832:2017 (seen); the tables themselves from memory
 */
export const DESIGNATION_TABLES = { standard: 'ISO 1832', edition: 2017 } as const;
export type DesignationTables = { readonly standard: 'ISO 1832'; readonly edition: 2017 };
