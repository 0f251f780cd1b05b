import { memo } from "react";
import type { Player, SectionId } from "../../band/index.ts";
import { Button, Menu, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import { askRole, freePlayers, restSection, type RoleField } from "../actions/ask.ts";
import { move } from "../actions/edit.ts";
import { hearPlayer } from "../actions/hear.ts";
import { toggleFixed } from "../actions/roles.ts";
import { abandonSwap, beginSwap } from "../actions/swap.ts";
import { PickList } from "../parts/pick-list.tsx";
import { usePage } from "../store.ts";

const nobody = "nobody";

/** Who leads, who doubles, who rests, who is fixed; and what can be done with the chosen player. */
export const Roles = memo(function Roles() {
  const players = usePage((state) => state.history.present.inquiry.players);
  return (
    <div className="roles">
      <RolePick field="leadPlayer" label="Lead" none="anyone" words="leads" />
      <FixedPick />
      <RolePick field="octaveBelowPlayer" label="Lead 8vb" none={nobody} words="doubles 8vb" />
      <RolePick field="octaveAbovePlayer" label="Lead 8va" none={nobody} words="doubles 8va" />
      <RestPick players={players} />
      <ChosenPlayer />
    </div>
  );
});

/** One part, for one player or for nobody in particular. */
function RolePick(props: {
  readonly field: RoleField;
  readonly label: string;
  readonly none: string;
  readonly words: string;
}) {
  const { field, label, none, words } = props;
  const inquiry = usePage((state) => state.history.present.inquiry);
  const rows = [
    { id: "", text: none },
    ...inquiry.players.map(({ id, name }) => ({ id, text: name })),
  ];
  const picked = inquiry.players.find((player) => player.id === inquiry[field]);
  return (
    <PickList
      label={label}
      className="pick role role-half"
      rows={rows}
      picked={picked?.id ?? ""}
      onPick={(id) => {
        const name = inquiry.players.find((player) => player.id === id)?.abbreviation ?? none;
        askRole(field, id === "" ? null : id, `${name} ${words}`);
      }}
    >
      {picked?.abbreviation ?? none}
    </PickList>
  );
}

/** Sections that rest, one click each. */
function RestPick({ players }: { readonly players: readonly Player[] }) {
  const locks = usePage((state) => state.history.present.inquiry.locks);
  const sections = [...new Set(players.map((player) => player.section))];
  const isResting = (section: SectionId) =>
    players
      .filter((player) => player.section === section)
      .every((player) =>
        locks.some((lock) => lock.playerId === player.id && lock.sounding === "rest"),
      );
  const resting = sections.filter(isResting);
  return (
    <div className="role">
      <span className="role-label">Resting</span>
      <MenuTrigger>
        <Button className="pick-button" aria-label="Sections that rest">
          {resting.length === 0 ? "no section" : resting.join(", ")}
        </Button>
        <Popover className="pop">
          <Menu
            className="pick-rows"
            aria-label="Sections that rest"
            selectionMode="multiple"
            selectedKeys={resting}
            onAction={(key) => {
              const section = key as SectionId;
              restSection(section, !isResting(section));
            }}
          >
            {sections.map((section) => (
              <MenuItem className="pick-row" id={section} key={section}>
                {isResting(section) ? `${section} play again` : `${section} rest`}
              </MenuItem>
            ))}
          </Menu>
        </Popover>
      </MenuTrigger>
    </div>
  );
}

/** Players held where they are. */
function FixedPick() {
  const inquiry = usePage((state) => state.history.present.inquiry);
  const held = inquiry.locks.flatMap((lock) => {
    const player = inquiry.players.find((candidate) => candidate.id === lock.playerId);
    return player === undefined ? [] : [player];
  });
  const words =
    held.length === 0
      ? nobody
      : held.length > 2
        ? `${held.length} players`
        : held.map((player) => player.abbreviation).join(", ");
  return (
    <div className="role role-half">
      <span className="role-label">Fixed</span>
      <MenuTrigger>
        <Button
          className="pick-button"
          isDisabled={held.length === 0}
          aria-label={`Fixed: ${words}`}
        >
          {words}
        </Button>
        <Popover className="pop">
          <Menu
            className="pick-rows"
            aria-label="Fixed players"
            onAction={(key) => freePlayers(key === "all" ? "all" : [String(key)], "free players")}
          >
            {[
              ...held.map((player) => ({ id: player.id, text: `Free ${player.name}` })),
              { id: "all", text: "Free everybody" },
            ].map((row) => (
              <MenuItem className="pick-row" id={row.id} key={row.id}>
                {row.text}
              </MenuItem>
            ))}
          </Menu>
        </Popover>
      </MenuTrigger>
    </div>
  );
}

/** What can be done with the player whose token is chosen. */
function ChosenPlayer() {
  const chosen = usePage((state) => state.selectedPlayer);
  const swapping = usePage((state) => state.swapping);
  const inquiry = usePage((state) => state.history.present.inquiry);
  const pitch = usePage((state) => (chosen === null ? undefined : state.view?.pitches[chosen]));
  const player = inquiry.players.find((candidate) => candidate.id === chosen);
  if (player === undefined) return null;
  const isFixed = inquiry.locks.some((lock) => lock.playerId === player.id);
  if (swapping !== null) return <SwapWords />;
  return (
    <div className="role chosen-player">
      <span className="role-label">{player.name}</span>
      <button type="button" className="link" onClick={() => toggleFixed(player.id)}>
        {isFixed ? "Let go" : "Fix here"}
      </button>
      <button
        type="button"
        className="link"
        title="Changes places with the player you press next; or drag one token onto another"
        onClick={() => beginSwap(player.id)}
      >
        Swap
      </button>
      {pitch !== undefined && (
        <>
          <button type="button" className="link" onClick={() => move(player.id, null)}>
            Rest
          </button>
          <button
            type="button"
            className="link link-sound"
            aria-label="Hear alone"
            onClick={() => hearPlayer(player.id)}
          >
            Alone
          </button>
          <button
            type="button"
            className="link link-sound"
            aria-label="Stand out against the rest"
            title="Everybody sounds, the others 12 dB softer"
            onClick={() => hearPlayer(player.id, "softer")}
          >
            Stand out
          </button>
        </>
      )}
    </div>
  );
}

/** What a swap that was begun waits for. */
function SwapWords() {
  const name = usePage(
    ({ swapping, history }) =>
      history.present.inquiry.players.find((player) => player.id === swapping)?.abbreviation ?? "",
  );
  return (
    <div className="role chosen-player">
      <span>
        <b>Swap {name}:</b> press another player.
      </span>
      <button type="button" className="link" onClick={abandonSwap}>
        Never mind
      </button>
    </div>
  );
}
