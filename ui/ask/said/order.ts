import { askSaidOrder as words } from '../../../sim/words/en.ts';
import type { OrderPage } from '../../stations/order/plan.ts';

/** What people say who want the work in its order. */
export const orderSaid: Readonly<Record<OrderPage, readonly string[]>> = words.orderSaid;
