/** Changes with any change of results; the changelog says which figures move. */
export const ENGINE = 'backboard 0.1.0';
