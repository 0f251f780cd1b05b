import { Component, type ReactNode } from "react";
import { saveAsFile } from "./save-as-file.ts";
import { rememberProject } from "./remembered.ts";

/** Keeps a way on when the page cannot show what it holds: what is stored stays stored. */
export class Rescue extends Component<
  { readonly children: ReactNode },
  { readonly isLost: boolean }
> {
  override state = { isLost: false };

  static getDerivedStateFromError(): { readonly isLost: boolean } {
    return { isLost: true };
  }

  override render(): ReactNode {
    if (!this.state.isLost) return this.props.children;
    return (
      <main className="rescue" role="alert">
        <h1 className="loud">This cannot be shown</h1>
        <p>
          The page could not draw what this project holds. Nothing that was stored is lost: save the
          project as a file if you like, and go on with a new one.
        </p>
        <p className="row">
          <button type="button" className="act" onClick={beginAnew}>
            Go on with a new project
          </button>
          <button type="button" className="act" onClick={() => void saveAsFile()}>
            Save this one as a file
          </button>
        </p>
      </main>
    );
  }
}

function beginAnew(): void {
  rememberProject(null);
  location.replace(location.pathname + location.search + "#");
  location.reload();
}
