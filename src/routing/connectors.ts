/** The one table of connectors is in standards; routing orders by it. */
export { connectorToOrder as connectorSize } from '../standards/connectors';
