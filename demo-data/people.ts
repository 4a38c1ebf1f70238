import type { Role } from '../shared/traveller/index.ts';

/** The invented people of the demo plant. Badge and PIN are public on purpose: nothing here is real. */
export interface DemoPerson { readonly badge: string; readonly pin: string; readonly name: string; readonly roles: readonly Role[] }

export const KEEPER: DemoPerson = { badge: 'K-100', pin: '1000', name: 'Orla Quint', roles: ['keeper'] };

export const PEOPLE: readonly DemoPerson[] = [
  { badge: 'L-201', pin: '2010', name: 'Tamsin Vire', roles: ['lab'] },
  { badge: 'L-202', pin: '2020', name: 'Bram Osker', roles: ['lab'] },
  { badge: 'I-301', pin: '3010', name: 'Nell Harrow', roles: ['inspector'] },
  { badge: 'I-302', pin: '3020', name: 'Jory Pell', roles: ['inspector'] },
  { badge: 'I-303', pin: '3030', name: 'Sana Brook', roles: ['inspector', 'packer'] },
  { badge: 'Q-401', pin: '4010', name: 'Ida Marlow', roles: ['engineer'] },
  { badge: 'Q-402', pin: '4020', name: 'Teo Lindqvane', roles: ['engineer', 'releaser'] },
  { badge: 'R-501', pin: '5010', name: 'Vera Stane', roles: ['releaser'] },
  { badge: 'P-601', pin: '6010', name: 'Col Wend', roles: ['packer'] },
];
