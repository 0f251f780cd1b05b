import { useRef, useState, type KeyboardEvent } from "react";
import type { StripTone, ToneChoice } from "../../explore/index.ts";
import type { Colour } from "../../theory/index.ts";
import { askColour, askTone } from "../actions/ask.ts";
import { Choice, stepOfKey } from "../parts/choice.tsx";
import { usePage } from "../store.ts";
import { spoken, withSigns } from "../words/signs.ts";

const next: Readonly<Record<ToneChoice, ToneChoice>> = {
  off: "on",
  on: "required",
  required: "off",
};

const presets: readonly { value: Colour; text: string; meaning: string }[] = [
  { value: "plain", text: "plain", meaning: "Only the tones the symbol prints." },
  { value: "tensions", text: "tensions", meaning: "The printed tones and the natural tensions." },
  {
    value: "altered",
    text: "altered",
    meaning: "On dominants the altered tensions ♭9 ♯9 ♯11 ♭13 instead of the natural ones.",
  },
];

/** The twelve tones above the root, each off, on or required; presets above them. */
export function Tones() {
  const colour = usePage((state) => state.history.present.inquiry.colour);
  const strip = usePage((state) => state.strip);
  return (
    <div className="tones-block">
      <div className="row tones-head">
        <span id="tones-label">Tones</span>
        <Choice
          label="Preset of tones"
          className="presets"
          options={presets}
          value={colour}
          onChange={askColour}
        />
        <span className="tones-key push" aria-hidden="true">
          <i data-choice="required" /> required <i data-choice="on" /> on <i data-choice="off" />{" "}
          off
        </span>
      </div>
      <ToneRow strip={strip} />
    </div>
  );
}

function ToneRow({ strip }: { readonly strip: readonly StripTone[] }) {
  const [stop, setStop] = useState(0);
  const list = useRef<HTMLUListElement>(null);
  const keyed = (event: KeyboardEvent) => {
    const by = stepOfKey(event.key);
    if (by === 0) return;
    event.preventDefault();
    const at = (stop + by + strip.length) % strip.length;
    setStop(at);
    list.current?.querySelectorAll("button")[at]?.focus();
  };
  return (
    <ul className="tones" aria-labelledby="tones-label" ref={list} onKeyDown={keyed}>
      {strip.map((tone, index) => (
        <li key={tone.aboveRoot}>
          <button
            type="button"
            className="tone"
            data-choice={tone.choice}
            tabIndex={index === stop ? 0 : -1}
            aria-label={`${spoken(tone.degree)}, ${spoken(tone.name)}: ${tone.choice}`}
            title={tone.remark === "" ? undefined : withSigns(tone.remark)}
            onFocus={() => setStop(index)}
            onClick={() => askTone(tone.aboveRoot, next[tone.choice], tone.degree)}
          >
            <b>{withSigns(tone.degree)}</b>
            <span>{withSigns(tone.name)}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
