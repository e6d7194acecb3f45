import { createContext, type JSX, useContext } from 'solid-js';
import { OnlyWatches } from './OnlyWatches';
import './pageActions.css';

const AboveActions = createContext<() => JSX.Element>(() => null);

/** What stands in one line above the actions of every page inside it. */
export const AboveActionsProvider = AboveActions.Provider;

/** The actions of a page, the primary one last: bottom right, wherever else anything appears or goes. */
export function PageActions(props: { readonly children: JSX.Element }) {
  const renderAbove = useContext(AboveActions);
  return (
    <footer class="step-actions">
      {renderAbove()}
      <OnlyWatches />
      {props.children}
    </footer>
  );
}
