import {
  XmlBufferInputProvider,
  XmlDocument,
  XsdValidator,
  xmlRegisterInputProvider,
} from "libxml2-wasm";
import { dataText } from "./shared-data.ts";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

let validator: XsdValidator | undefined;

/** The W3C schema imports two others by web address; here they lie beside it. */
function schema(): XsdValidator {
  if (validator !== undefined) return validator;
  xmlRegisterInputProvider(
    new XmlBufferInputProvider({
      "xlink.xsd": bytes(dataText("xsd/xlink.xsd")),
      "xml.xsd": bytes(dataText("xsd/xml.xsd")),
    }),
  );
  const text = dataText("xsd/musicxml.xsd").replace(
    /schemaLocation="[^"]*\/(xlink|xml)\.xsd"/g,
    'schemaLocation="$1.xsd"',
  );
  const document = XmlDocument.fromString(text, { url: "musicxml.xsd" });
  validator = XsdValidator.fromDoc(document);
  return validator;
}

/**
 * What the W3C MusicXML 4.0 schema finds wrong with a document.
 * @returns null when it is valid
 */
export function schemaFault(musicXml: string): string | null {
  const document = XmlDocument.fromString(musicXml);
  try {
    schema().validate(document);
    return null;
  } catch (fault) {
    return String(fault);
  } finally {
    document.dispose();
  }
}
