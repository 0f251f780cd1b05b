import type { ReactNode } from "react";
import { Button, Dialog, DialogTrigger, Heading, Modal, ModalOverlay } from "react-aria-components";

/** A control that opens a dialog over the page; Escape and "Close" close it. */
export function Sheet(props: {
  readonly title: string;
  readonly control: ReactNode;
  readonly controlClass?: string;
  readonly controlLabel?: string;
  readonly children: ReactNode;
}) {
  const { title, control, controlClass = "link", controlLabel, children } = props;
  return (
    <DialogTrigger>
      <Button
        className={controlClass}
        {...(controlLabel === undefined ? {} : { "aria-label": controlLabel })}
      >
        {control}
      </Button>
      <ModalOverlay className="sheet-ground" isDismissable>
        <Modal className="sheet">
          <Dialog className="sheet-dialog">
            <header className="row sheet-head">
              <Heading slot="title" level={2}>
                {title}
              </Heading>
              <Button slot="close" className="link push">
                Close
              </Button>
            </header>
            {children}
          </Dialog>
        </Modal>
      </ModalOverlay>
    </DialogTrigger>
  );
}
