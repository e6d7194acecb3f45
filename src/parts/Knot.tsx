/** The knot in the strand, tied or untied; drawn about 40 by 44, in the colour of the text around it. */
export function Knot(props: { readonly isUntied: boolean }) {
  return (
    <svg class="knot" data-knot={props.isUntied ? 'untied' : 'tied'} viewBox="0 0 44 48" aria-hidden="true">
      <path d={props.isUntied ? 'M22 0 C18 12 26 18 22 24 S18 38 22 48' : tied} />
    </svg>
  );
}

const tied = 'M20 2 C34 10 42 22 36 32 C30 40 8 34 6 24 C4 14 20 12 28 22 C34 30 28 40 20 46';
