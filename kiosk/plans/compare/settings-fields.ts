import { html, type TemplateResult } from 'lit';
import '../../parts/gh-drop-list.ts';
import '../../parts/gh-field.ts';
import type { DropOption } from '../../parts/gh-drop-list.ts';
import { tell } from '../../parts/tell.ts';
import { typedFigure } from '../../desk/show.ts';
import type { Settings } from './comparison.ts';
import { settled } from './read-choice.ts';

/** Says that some of the comparison's settings are to be others. */
export function changeSettings(host: EventTarget, changes: Partial<Settings>): void {
  tell(host, 'settings-changed', { changes });
}

type TextSetting = { readonly [Name in keyof Settings]: Settings[Name] extends string ? (string extends Settings[Name] ? Name : never) : never }[keyof Settings];

/** A typed setting, taken when it is settled. */
export function typedSetting(host: EventTarget, settings: Settings, name: TextSetting, label: string, { unit = '', hint = '', error = '' } = {}): TemplateResult {
  const text = settings[name];
  return html`<gh-field label=${label} unit=${unit} hint=${hint} error=${error} entry="decimal" max-length="12" .value=${/^\d+(\.\d+)?$/.test(text) ? typedFigure(Number(text)) : text}
    @field-changed=${({ detail }: CustomEvent<{ value: string }>) => changeSettings(host, { [name]: settled(detail.value) })}></gh-field>`;
}

/** A setting that is one of a few. */
export function chosenSetting<Value extends string>(label: string, value: Value, options: readonly (DropOption & { readonly value: Value })[], change: (value: Value) => void): TemplateResult {
  return html`<gh-drop-list label=${label} .value=${value} .options=${options} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => {
    const chosen = options.find((option) => option.value === detail.value);
    if (chosen !== undefined) change(chosen.value);
  }}></gh-drop-list>`;
}
