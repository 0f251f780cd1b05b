/** The flag that goes with a sentence about something wrong. */
export function WarnSign() {
  return (
    <svg className="warn" width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
      <path className="ground" d="M2,1H18V15H8L2,19Z" />
      <path className="sign" d="M10,4V9.5M10,11.8V12.6" />
    </svg>
  );
}
