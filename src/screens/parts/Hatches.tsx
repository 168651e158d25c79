/** The hatches of all drawings and marks, once a page; colors by token, so that light, dark and print need no second set. */
export const Hatches = () => (
  <svg width="0" height="0" style={{ position: 'absolute' }} aria-hidden="true">
    <defs>
      <pattern id="h-concrete" width="26" height="26" patternUnits="userSpaceOnUse">
        <rect width="26" height="26" fill="var(--m-concrete)" />
        <g fill="var(--m-concrete-mark)">
          <circle cx="3" cy="4" r=".65" />
          <circle cx="12" cy="2.2" r=".55" />
          <circle cx="20" cy="7" r=".65" />
          <circle cx="8" cy="11" r=".55" />
          <circle cx="16" cy="14" r=".65" />
          <circle cx="24" cy="18" r=".55" />
          <circle cx="4" cy="19" r=".65" />
          <circle cx="12" cy="23" r=".55" />
          <circle cx="20" cy="24" r=".65" />
        </g>
        <path
          d="M6.5 6.5l3.6-.6-1.4 3.2zM17.5 18.6l3.6.8-2.6 2.4zM21.5 1.4l2.8 1-2 1.8z"
          fill="none"
          stroke="var(--m-concrete-mark)"
          strokeWidth=".7"
        />
      </pattern>
      <pattern id="h-block" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="9" height="9" fill="var(--m-concrete)" />
        <path d="M0 0V9M2.5 0V9" stroke="var(--m-concrete-mark)" strokeWidth=".7" />
      </pattern>
      <pattern id="h-stud" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="5" height="5" fill="var(--m-wood)" />
        <path d="M0 0V5" stroke="var(--ink-3)" strokeWidth="1" />
      </pattern>
      <pattern id="h-ply" width="60" height="9" patternUnits="userSpaceOnUse">
        <rect width="60" height="9" fill="var(--m-ply)" />
        <path
          d="M0 2.5C15 1.2 26 3.8 40 2.5S55 2 60 2.5M0 6.8C10 7.8 22 5.8 34 6.8S52 7.6 60 6.8"
          fill="none"
          stroke="var(--m-ply-mark)"
          strokeWidth=".6"
        />
      </pattern>
      <pattern id="h-wood-end" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" fill="var(--m-wood)" />
        <path d="M0 8L8 0M0 0L8 8" stroke="var(--m-ply-mark)" strokeWidth=".6" />
      </pattern>
      <pattern id="h-bar" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <path d="M0 0V6" stroke="var(--rule)" strokeWidth="1.5" />
      </pattern>
      <pattern id="h-zone" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0 0V9" stroke="var(--new)" strokeWidth=".55" opacity=".75" />
      </pattern>
      <pattern id="h-intrusion" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0 0H5M0 0V5" stroke="var(--stop)" strokeWidth="1.7" />
      </pattern>
      <pattern id="h-extra" width="4.5" height="4.5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="4.5" height="4.5" fill="var(--extra-wash)" />
        <path d="M0 0V4.5" stroke="var(--extra)" strokeWidth="2.6" />
      </pattern>
      <pattern id="h-verify" width="4" height="4" patternUnits="userSpaceOnUse">
        <rect width="4" height="4" fill="var(--verify-wash)" />
        <circle cx="1" cy="1" r=".95" fill="var(--verify)" />
        <circle cx="3" cy="3" r=".95" fill="var(--verify)" />
      </pattern>
    </defs>
  </svg>
);
