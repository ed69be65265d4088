import { type ComponentType, createElement, type Key, type ReactElement } from 'react';

/** A component whose code is fetched when it is first wanted. */
export type Part<Props> = {
  /** Null until it has come. */
  component(): ComponentType<Props> | null;
  /** Fetches it; again after a fetch that failed. Rejects when it cannot be had. */
  bring(): Promise<void>;
};

export function part<Props>(load: () => Promise<ComponentType<Props>>): Part<Props> {
  let component: ComponentType<Props> | null = null;
  let coming: Promise<void> | null = null;
  return {
    component: () => component,
    bring: () => {
      coming ??= load().then(
        (loaded) => {
          component = loaded;
        },
        (error: unknown) => {
          coming = null;
          throw error;
        },
      );
      return coming;
    },
  };
}

/** A part that came with those who show it. */
export function ready<Props>(component: ComponentType<Props>): Part<Props> {
  return { component: () => component, bring: async () => undefined };
}

/** A part with what it is given. */
export type Placed = {
  /** Null until its code has come. */
  element(): ReactElement | null;
  bring(): Promise<void>;
};

/** `key`: another one is another instance, as in a list. */
export function placed<Props extends object>(of: Part<Props>, props: Props, key?: Key): Placed {
  return {
    element: () => {
      const component = of.component();
      return component === null ? null : createElement(component, { ...props, key });
    },
    bring: of.bring,
  };
}
