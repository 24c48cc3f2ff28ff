import { Band } from "../look/band.tsx";
import { Form } from "../look/form.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { LanguageSwitch } from "./language-switch.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { ruleSpecs, settingsSpecs } from "./specs/settings-specs.ts";

/** How numbers are written, and what findings are judged by. */
export function SettingsScreen() {
  const { live } = useBook();
  const reset = () =>
    void live.write("settings", "settings", Object.fromEntries(ruleSpecs.map(({ field }) => [field, null])));
  return (
    <Screen title={words.settings} back={undoOrBack(live, "/more")} next={{ label: words.back, to: "/more" }}>
      <LanguageSwitch />
      <Form kind="settings" id="settings" specs={settingsSpecs} />
      <Band tint>
        <strong>{words.rules}</strong>
        <p className="note">{words.rulesHint}</p>
      </Band>
      <Form kind="settings" id="settings" specs={ruleSpecs} />
      <Band tint press={{ onPress: reset }}>
        {words.resetRules}
      </Band>
    </Screen>
  );
}
