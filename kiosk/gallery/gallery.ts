import { html, render, type TemplateResult } from 'lit';
import '../parts/index.ts';
import { toneOf, type StateName } from '../parts/index.ts';
import { chooseDensity, chooseTheme, type Density, type Theme } from '../theme/choose-theme.ts';
import { benchSections } from './bench-sections.ts';
import { chartSections } from './chart-sections.ts';
import { deskSections } from './desk-sections.ts';

const asked = new URLSearchParams(location.search);
const themes: readonly Theme[] = ['light', 'dark', 'contrast'];
const densities: readonly Density[] = ['bench', 'desk'];
chooseTheme(themes.find((theme) => theme === asked.get('theme')) ?? null);
chooseDensity(densities.find((density) => density === asked.get('density')) ?? 'bench');

const only = asked.get('part');
const isState = (name: string): name is StateName => name in toneOf;
const marks = html`<div class="marks">
  ${Object.keys(toneOf).filter(isState).map((state) => html`<gh-state-mark state=${state} word=${state}></gh-state-mark>`)}
</div>
<div class="row">${Object.keys(toneOf).filter(isState).slice(0, 12).map((state) => html`<gh-state-mark boxed state=${state} word=${state}></gh-state-mark>`)}</div>`;

const sections: readonly (readonly [string, TemplateResult])[] = [['gh-state-mark', marks], ...benchSections, ...deskSections, ...chartSections];

render(
  html`<header>
      <h1>Parts in every state</h1>
      <gh-tabs
        label="Look"
        current="?theme=${asked.get('theme') ?? 'light'}"
        .tabs=${[...themes.map((theme) => ({ href: `?theme=${theme}`, text: theme })), { href: '?theme=light&density=desk', text: 'desk density' }]}
      ></gh-tabs>
    </header>
    <main>
      ${sections
        .filter(([name]) => only === null || name.split(' ').includes(only))
        .map(([name, content]) => html`<section><h2>${name}</h2>${content}</section>`)}
      <p class="log" aria-live="off"></p>
    </main>`,
  document.body,
);

const reported = [
  'value-entered', 'tally-tapped', 'slip-folded', 'earlier-wanted', 'field-changed', 'option-chosen', 'options-chosen',
  'notice-dismissed', 'outbox-opened', 'sheet-closed', 'sort-wanted', 'filter-changed', 'csv-wanted', 'cursor-moved',
];
for (const name of reported)
  document.addEventListener(name, (event) => {
    const log = document.querySelector('.log');
    if (log !== null && event instanceof CustomEvent) log.textContent = `${name} ${JSON.stringify(event.detail)}`;
  });
