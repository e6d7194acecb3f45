/** The knot in the strand, tied or untied; drawn about 40 by 44, in the colour of the text around it. */
export function Knot(props: { readonly isUntied: boolean }) {
  return (
    <svg class="knot" data-knot={props.isUntied ? 'untied' : 'tied'} viewBox="0 0 44 48" aria-hidden="true">
      <path d={props.isUntied ? untied : tied} />
    </svg>
  );
}

const tied = 'M20 2 C34 10 42 22 36 32 C30 40 8 34 6 24 C4 14 20 12 28 22 C34 30 28 40 20 46';

/** As many curves as the knot has, so that one can turn into the other: the untying is the one flourish. */
const untied = 'M22 0 C20 5 20 9 22 12 C24 15 24 20 22 24 C20 28 20 32 22 36 C24 40 24 44 22 48';
