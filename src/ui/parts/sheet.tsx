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
      <SheetFrame title={title}>{children}</SheetFrame>
    </DialogTrigger>
  );
}

/** The dialog itself, for what opens it in another way than by a control of its own. */
export function SheetFrame(props: {
  readonly title: string;
  readonly open?: { readonly isOpen: boolean; readonly onChange: (isOpen: boolean) => void };
  readonly children: ReactNode;
}) {
  const { title, open, children } = props;
  const opening = open === undefined ? {} : { isOpen: open.isOpen, onOpenChange: open.onChange };
  return (
    <ModalOverlay className="sheet-ground" isDismissable {...opening}>
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
  );
}
