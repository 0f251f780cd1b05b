import { memo } from "react";
import { Button, Menu, MenuItem, MenuTrigger, Popover, Text } from "react-aria-components";
import { findNextFew, showNext } from "../actions/edit.ts";
import { isSamePlace } from "../state/places.ts";
import { usePage } from "../store.ts";
import { ordinal, signed } from "../words/counts.ts";
import { withSigns } from "../words/signs.ts";

/** The best voicings of other stacks in the same texture, on demand. */
export const NextFewPick = memo(function NextFewPick() {
  const nextFew = usePage((state) => state.nextFew);
  const isHere = usePage(
    ({ nextFew: few, view }) =>
      few !== null && view !== null && isSamePlace(few.key, view.report.cell),
  );
  const nameOf = usePage((state) => state.answer?.asked.nameOf);
  const cells = isHere ? (nextFew?.cells ?? null) : null;
  const least = cells?.[0]?.cost ?? 0;
  return (
    <MenuTrigger
      onOpenChange={(isOpen) => {
        if (isOpen) findNextFew();
      }}
    >
      <Button className="link">The next few</Button>
      <Popover className="pop">
        <Menu
          className="pick-rows"
          aria-label="Best voicings of other notes in this texture"
          onAction={(key) => {
            const index = Number(key);
            const cell = cells?.[index];
            if (cell !== undefined)
              showNext(cell, index === 0 ? "best here" : `${ordinal(index + 1)} best here`);
          }}
        >
          {cells === null ? (
            <MenuItem className="pick-row" id="wait" isDisabled>
              Looking …
            </MenuItem>
          ) : (
            cells.map((cell, index) => {
              const stack = [...new Set(cell.pitches.filter((pitch) => pitch > 0))].sort(
                (a, b) => a - b,
              );
              const notes = stack.map((pitch) => withSigns(nameOf?.(pitch).name ?? "")).join(" ");
              return (
                <MenuItem className="pick-row" id={String(index)} key={notes} textValue={notes}>
                  <Text slot="label">{notes}</Text>
                  <Text slot="description">
                    {index === 0
                      ? "the best here"
                      : `${signed(cell.cost - least)} over the best here`}
                  </Text>
                </MenuItem>
              );
            })
          )}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
});
