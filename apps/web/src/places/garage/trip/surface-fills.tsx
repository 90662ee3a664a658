/** Signatures of the surfaces, in narrow line, as a section drawing tells its materials apart. */
export function SurfaceFills() {
  return (
    <defs>
      <pattern id="surface-sealed" width="24" height="24" patternUnits="userSpaceOnUse">
        <path d="M0 12H24" stroke="var(--ink)" strokeWidth="1" />
      </pattern>
      <pattern id="surface-gravel" width="14" height="12" patternUnits="userSpaceOnUse">
        <circle cx="4" cy="3" r="1.6" fill="none" stroke="var(--ink)" />
        <circle cx="11" cy="9" r="1.6" fill="none" stroke="var(--ink)" />
      </pattern>
      <pattern id="surface-corrugated" width="6" height="24" patternUnits="userSpaceOnUse">
        <path d="M3 0V24" stroke="var(--ink)" strokeWidth="1.5" />
      </pattern>
      <pattern id="surface-rock" width="20" height="12" patternUnits="userSpaceOnUse">
        <path d="M1 10L6 2L10 10Z M12 6L15 1L19 6Z" fill="none" stroke="var(--ink)" />
      </pattern>
      <pattern id="surface-sand" width="20" height="8" patternUnits="userSpaceOnUse">
        <path d="M0 5Q5 0 10 5T20 5" fill="none" stroke="var(--ink)" />
      </pattern>
    </defs>
  );
}

/** One signature with its word, so that no key is needed elsewhere. */
export function SurfaceSample({ of }: { of: string }) {
  return (
    <svg className="surface-sample" aria-hidden="true" width="44" height="24">
      <rect x="1" y="1" width="42" height="22" fill={`url(#surface-${of})`} stroke="var(--ink)" />
    </svg>
  );
}
